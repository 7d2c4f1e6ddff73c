package railtrim.practice;

/**
 * What pulls at the adjust pin besides the two legs: parts soldered to it from a supply, taken together (Norton).
 *
 * @param siemens of all of them in parallel
 * @param amperes they would send into the pin if it were at ground
 */
record Pull(double siemens, double amperes) {
    static final Pull NONE = new Pull(0, 0);

    Pull and(double volts, double ohms) {
        return Double.isInfinite(ohms) ? this : new Pull(siemens + 1 / ohms, amperes + volts / ohms);
    }
}
