/** The window. Views show a {@link railtrim.procedure.State} and offer facts to a {@link railtrim.procedure.Course}; they hold no rule and no result. */
package railtrim.window;
