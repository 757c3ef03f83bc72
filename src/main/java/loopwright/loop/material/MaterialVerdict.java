package loopwright.loop.material;

/** What is said of materials, from good to bad; what nobody knows stands between. */
public enum MaterialVerdict {
    /** They go together. */
    OK,
    /** Not known: ask the maker. */
    UNKNOWN,
    /** They go together for a while, or with care. */
    WARN,
    /** They do not go together. */
    BROKEN;

    /** The worse of the two. */
    public MaterialVerdict or(MaterialVerdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
