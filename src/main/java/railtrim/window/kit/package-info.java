/** Small things every part of the window is made of: nodes, signs, and what the keys do. */
package railtrim.window.kit;
