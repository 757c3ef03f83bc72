package loopwright.paper;

/** Names of groups: A to Z, then AA, AB, … */
final class Letters {

    private static final int COUNT = 26;

    private Letters() {}

    /** The name of the n-th, from 0. */
    static String of(int n) {
        String last = Character.toString('A' + n % COUNT);
        return n < COUNT ? last : of(n / COUNT - 1) + last;
    }
}
