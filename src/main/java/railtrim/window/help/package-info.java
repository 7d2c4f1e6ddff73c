/** Help beside a field: words, a small drawing, the words of the trade, and the sum behind a number. */
package railtrim.window.help;
