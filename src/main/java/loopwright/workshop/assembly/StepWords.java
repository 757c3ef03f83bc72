package loopwright.workshop.assembly;

/** What is done with a piece when its turn comes. */
final class StepWords {

    private StepWords() {}

    /** At the dry fits: no paint, no coolant. */
    static String dry(Piece piece) {
        if (piece.goesOnWithPanel()) {
            return "lay it beside, try its tubes, then put it on: nothing may touch";
        }
        String hand = piece.reach().isEmpty() ? "" : "; get a hand to each plug and fitting";
        return switch (piece.traits().kind()) {
            case PART -> (piece.screws().isEmpty() ? "put in" : "put in, two screws") + hand;
            case LID -> piece.screws().isEmpty() ? "clip on" : "put on, two screws; nothing may touch it from below";
            case PLUG -> "plug in, turn its cable";
            case RIGID_RUN -> "mark its length between the fittings; cut a dummy";
            case SOFT_RUN -> "hold the tube along its way, mark its length; it must not kink";
        };
    }

    /** After paint. */
    static String painted(Piece piece) {
        if (piece.goesOnWithPanel()) {
            return "bolt it to its panel, lay it beside, join its tubes, then put it on";
        }
        return switch (piece.traits().kind()) {
            case PART ->
                piece.screws().isEmpty()
                        ? "put in with its own fixings"
                        : "put in, all screws by hand first, then tight crosswise";
            case LID -> piece.screws().isEmpty() ? "clip on" : "put on, all screws by hand first";
            case PLUG -> "plug in";
            case RIGID_RUN, SOFT_RUN -> "cut, deburr, join both ends";
        };
    }
}
