package railtrim.command;

/** A command whose options have been filled in. */
interface Asked {
    /**
     * @throws railtrim.quantity.BadInput or {@link BadOption} where what was typed cannot be used
     */
    Answer answer();
}
