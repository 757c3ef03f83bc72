package loopwright.catalog.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.part.Board;
import loopwright.catalog.read.Problems;

/** Where a board's headers are given, each has its own id and there are as many as the board says it has. */
final class HeadersAreNamedOnce implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Board> board : items.of(Board.class)) {
            List<Board.Header> headers = board.value().headers();
            int said = board.value().electric().fanHeaders();
            if (!headers.isEmpty() && headers.size() != said) {
                problems.add(board.item()
                        .problem(
                                "electric.fan_headers",
                                Integer.toString(said),
                                "the " + headers.size() + " of its headers",
                                ""));
            }
            Set<String> seen = new HashSet<>();
            for (int i = 0; i < headers.size(); i++) {
                if (!seen.add(headers.get(i).id())) {
                    problems.add(board.item()
                            .problem(
                                    "headers[" + i + "].id",
                                    headers.get(i).id(),
                                    "a name that no other header of the board has",
                                    ""));
                }
            }
        }
    }
}
