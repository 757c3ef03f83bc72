package loopwright.paper;

import java.util.ArrayList;
import java.util.List;

/** A section of an answer, piece by piece, for a terminal and for a page alike: nothing is worded twice. */
public final class Passages {

    private final List<Passage> all = new ArrayList<>();

    /** A piece of a section. */
    public sealed interface Passage {}

    /**
     * A table.
     *
     * @param heads with units
     */
    public record Table(List<String> heads, List<List<String>> rows) implements Passage {
        /** Copies. */
        public Table {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    /**
     * A sentence.
     *
     * @param lead what it is about, with what stands between; blank: nothing
     */
    public record Said(String lead, String text) implements Passage {}

    /** A rule's word and its sentence. */
    public record Judged(String word, String sentence) implements Passage {}

    /** An empty line on a terminal. */
    public record Gap() implements Passage {}

    /** Columns that a rule's word takes on a terminal. */
    private static final int WORD = 9;

    /** Adds a table with a head line. */
    Passages table(Columns table) {
        all.add(new Table(table.heads(), table.body()));
        return this;
    }

    /** Adds a sentence. */
    public Passages say(String lead, String text) {
        all.add(new Said(lead, text));
        return this;
    }

    /** Adds a rule's word and sentence. */
    Passages judge(String word, String sentence) {
        all.add(new Judged(word, sentence));
        return this;
    }

    /** Adds an empty line. */
    Passages gap() {
        all.add(new Gap());
        return this;
    }

    /** Adds another section's pieces. */
    Passages then(Passages other) {
        all.addAll(other.all);
        return this;
    }

    /** The pieces. */
    public List<Passage> all() {
        return List.copyOf(all);
    }

    /** Lines of at most {@value Lines#WIDTH} columns. */
    public List<String> lines() {
        List<String> out = new ArrayList<>();
        for (Passage one : all) {
            if (one instanceof Table table) {
                out.addAll(Columns.of(table).lines(""));
            } else if (one instanceof Said said) {
                out.addAll(Lines.wrap(said.lead(), said.text()));
            } else if (one instanceof Judged judged) {
                String word = judged.word()
                        + " ".repeat(Math.max(1, WORD - judged.word().length()));
                out.addAll(Lines.wrap(word, " ".repeat(WORD), judged.sentence()));
            } else {
                out.add("");
            }
        }
        return out;
    }
}
