/** The shelf: all jobs of a folder at a glance, searched and compared. */
package railtrim.window.shelf;
