package loopwright.oracle.rank;

/** What a list is ordered by. */
enum By {
    COST,
    TEMPERATURE,
    NOISE,
    LABOUR,
    DAYS
}
