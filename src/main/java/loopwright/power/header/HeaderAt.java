package loopwright.power.header;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.part.Board;

/**
 * A header of the board.
 *
 * @param forPump whether it is made for a pump
 * @param limitMilliA what it gives at most
 */
public record HeaderAt(String id, boolean forPump, int limitMilliA) {

    /** A board's headers; of a board that only counts them, that many for fans at the usual limit. */
    public static List<HeaderAt> of(Board board, double usualLimitA) {
        List<HeaderAt> out = new ArrayList<>();
        for (Board.Header header : board.headers()) {
            out.add(new HeaderAt(header.id(), header.use() == Board.Header.Use.PUMP, MilliAmps.of(header.limitA())));
        }
        for (int i = 1; board.headers().isEmpty() && i <= board.electric().fanHeaders(); i++) {
            out.add(new HeaderAt("fan-" + i, false, MilliAmps.of(usualLimitA)));
        }
        return List.copyOf(out);
    }
}
