/** What goes on paper, looked at before it is printed. */
package railtrim.window.print;
