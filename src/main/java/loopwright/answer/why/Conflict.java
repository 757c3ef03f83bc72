package loopwright.answer.why;

import java.util.List;

/** Facts and wishes that cannot all hold, although they can without any one of them. */
public record Conflict(List<Stated> facts) {
    /** Copies. */
    public Conflict {
        facts = List.copyOf(facts);
    }
}
