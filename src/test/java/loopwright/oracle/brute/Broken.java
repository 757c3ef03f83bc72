package loopwright.oracle.brute;

/** A set of up to 128 facts. */
record Broken(long low, long high) {

    static final Broken NOTHING = new Broken(0, 0);

    static Broken of(int fact) {
        if (fact >= 2 * Long.SIZE) {
            throw new IllegalArgumentException("too many facts for a tiny case");
        }
        return fact < Long.SIZE ? new Broken(1L << fact, 0) : new Broken(0, 1L << (fact - Long.SIZE));
    }

    Broken or(Broken other) {
        return new Broken(low | other.low, high | other.high);
    }

    Broken without(Broken other) {
        return new Broken(low & ~other.low, high & ~other.high);
    }

    boolean isWithin(Broken other) {
        return (low & ~other.low) == 0 && (high & ~other.high) == 0;
    }

    boolean has(int fact) {
        return !of(fact).without(this).equals(of(fact));
    }
}
