/** The practice bench in the window: a board to probe, a meter to read, a switch, a load, an iron and a drawer of parts. */
package railtrim.window.bench;
