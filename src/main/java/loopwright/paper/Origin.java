package loopwright.paper;

import java.util.List;
import java.util.Optional;
import loopwright.answer.WhatIfAnswer;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Brief;

/**
 * What an answer came from.
 *
 * @param program name and version
 * @param catalog the catalogue's version: a digest of its files
 * @param brief the brief's id
 * @param whatIfs what readings and assumptions change, chassis by chassis; none where there are none
 */
public record Origin(String program, String catalog, String brief, List<WhatIfAnswer> whatIfs) {

    /** Copies. */
    public Origin {
        whatIfs = List.copyOf(whatIfs);
    }

    /** The origin of an answer to a brief. */
    public static Origin of(String program, Catalog catalog, Brief brief) {
        return new Origin(program, catalog.version(), brief.id(), List.of());
    }

    /** The same origin with what readings and assumptions change. */
    public Origin with(List<WhatIfAnswer> more) {
        return new Origin(program, catalog, brief, more);
    }

    /** What they change in one chassis. */
    Optional<WhatIfAnswer> findWhatIf(String chassis) {
        return whatIfs.stream()
                .filter(w -> w.fitCase().chassis().id().equals(chassis))
                .findFirst();
    }

    /** The line under every answer for people. */
    public String line() {
        return "brief " + brief + ", catalogue " + catalog + ", " + program;
    }
}
