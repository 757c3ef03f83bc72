package loopwright.answer.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import loopwright.answer.Fates;
import loopwright.answer.Fates.Fate;
import loopwright.answer.Halt;
import loopwright.catalog.Catalog;
import loopwright.catalog.measure.Length;
import loopwright.catalog.measure.Lengths;
import loopwright.catalog.measure.Replacement;
import loopwright.catalog.read.ProblemsException;
import loopwright.fit.FitCase;
import loopwright.fit.FoundLayout;
import loopwright.quantity.Dimension;

/** Finds out what hangs on a dimension: everything is searched anew with it at either end of its ±. */
final class HangSearch {

    private final FitCase fitCase;
    private final Lengths lengths;
    private final Fates fates;
    private final Function<List<Replacement>, Catalog> reread;
    private final Optional<FoundLayout> only;

    /**
     * A search.
     *
     * @param fits every layout that fits as it is
     * @param only the layout that is asked about, if it is only one
     * @param reread the catalogue with some more lengths replaced
     */
    HangSearch(
            FitCase fitCase,
            List<FoundLayout> fits,
            Optional<FoundLayout> only,
            Function<List<Replacement>, Catalog> reread,
            Halt halt) {
        this.fitCase = fitCase;
        this.lengths = new Lengths(fitCase.catalog());
        this.fates = new Fates(fitCase, fits, halt);
        this.only = only;
        this.reread = reread;
    }

    /** What hangs on a dimension; nothing where the catalogue would not be right with it at an end, or the time is up. */
    Optional<Hang> of(Measurable measurable) {
        Set<String> died = new HashSet<>();
        Set<String> alive = new HashSet<>();
        int plusMinus = measurable.now().plusMinusHmm();
        List<Optional<FitCase>> cases = List.of(moved(measurable, -plusMinus), moved(measurable, plusMinus));
        if (only.isPresent()) {
            return ofOne(only.get(), cases);
        }
        List<Optional<Fate>> ends =
                cases.stream().parallel().map(c -> c.map(fates::in)).toList();
        for (Optional<Fate> fate : ends) {
            if (fate.isEmpty() || !fate.get().whole()) {
                return Optional.empty();
            }
            died.addAll(fate.get().died());
            alive.addAll(fate.get().alive());
        }
        return Optional.of(new Hang(died.size(), alive.size(), true));
    }

    /** What the one layout that is asked about does at the ends; exact only where both can be asked. */
    private Optional<Hang> ofOne(FoundLayout found, List<Optional<FitCase>> cases) {
        if (cases.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        boolean keeps = cases.stream().allMatch(c -> fates.keeps(c.orElseThrow(), found));
        return Optional.of(new Hang(keeps ? 0 : 1, 0, true));
    }

    private Optional<FitCase> moved(Measurable measurable, int moreHmm) {
        List<Replacement> all = new ArrayList<>();
        for (String id : measurable.ids()) {
            Optional<Length> length = lengths.find(id, measurable.path());
            if (length.isEmpty()) {
                return Optional.empty();
            }
            Dimension was = length.get().dimension();
            Dimension to = new Dimension(was.valueHmm() + moreHmm, was.plusMinusHmm(), was.known(), was.distribution());
            all.add(new Replacement(id, measurable.path(), was, to, "measure"));
        }
        try {
            Catalog catalog = reread.apply(all);
            return Optional.of(
                    new FitCase(catalog, catalog.chassis(fitCase.chassis().id()), fitCase.brief()));
        } catch (ProblemsException e) {
            // A body would leave its room, say: then nobody can search, and what is told stays an estimate.
            return Optional.empty();
        }
    }
}
