package loopwright.answer.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.answer.Halt;
import loopwright.answer.Sites;
import loopwright.answer.why.BuildWish.Figure;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.rank.Order;
import loopwright.rank.RankResult;
import loopwright.rank.RankSearch;
import org.junit.jupiter.api.Test;

/** Conflicts among limits of builds, each asked again of a whole ranking with just these limits. */
class BuildWhyTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));
    private static final Brief BRIEF = CatalogReader.readBrief(Path.of("scenarios/slim-desk.yaml"), CATALOG);
    private static final FitCase CASE =
            new FitCase(CATALOG, CATALOG.chassis(BRIEF.chassis().get(0)), BRIEF);

    private static WhyAnswer why(BuildWish... wishes) {
        return new WhyAnswer(CASE, new Wishes(List.of(), List.of(wishes)), Halt.NEVER);
    }

    /** Whether a ranking of the brief finds a build when only these facts are asked. */
    private static RankResult ranked(Set<String> ids, List<BuildWish> wishes) {
        BriefLimits was = BRIEF.limits();
        Optional<Long> price = ids.contains("limit:price") ? was.budgetCents() : Optional.empty();
        double coolant = ids.contains("limit:coolant") ? was.coolantMaxC() : 80;
        Optional<Double> noise = ids.contains("limit:noise") ? was.noiseMaxDBA() : Optional.empty();
        for (BuildWish wish : wishes) {
            if (ids.contains("wish:" + wish.text())) {
                price = wish.figure() == Figure.PRICE
                        ? Optional.of(Math.min((long) wish.most(), price.orElse(Long.MAX_VALUE)))
                        : price;
                coolant = wish.figure() == Figure.COOLANT ? Math.min(wish.most(), coolant) : coolant;
            }
        }
        BriefLimits limits = new BriefLimits(
                price,
                was.roomC(),
                coolant,
                noise,
                ids.contains("limit:labour") ? was.labourMaxH() : Optional.empty(),
                ids.contains("limit:days") ? was.leadMaxDays() : Optional.empty(),
                was.freeAreaMin(),
                was.mods(),
                Optional.empty());
        Brief brief = new Brief(
                BRIEF.id(),
                BRIEF.title(),
                BRIEF.client(),
                BRIEF.chassis(),
                BRIEF.parts(),
                BRIEF.loop(),
                limits,
                BRIEF.terms());
        FitCase fitCase = new FitCase(CATALOG, CASE.chassis(), brief);
        return new RankSearch(fitCase, FitWish.ALL, Sites.model(fitCase), () -> false).run(Order.COST, 1);
    }

    private static Set<String> ids(Conflict conflict) {
        return conflict.facts().stream().map(Stated::id).collect(Collectors.toSet());
    }

    @Test
    void everyConflictIsOneAndEveryPartOfItIsNone() {
        List<BuildWish> wishes = List.of(
                new BuildWish("coolant=38C", Figure.COOLANT, 38), new BuildWish("price=2000", Figure.PRICE, 200_000));
        WhyAnswer answer = why(wishes.toArray(BuildWish[]::new));

        assertThat(answer.builds().had()).isEmpty();
        assertThat(answer.builds().isWhole()).isTrue();
        assertThat(answer.builds().conflicts()).isNotEmpty();
        for (BuildWhy.Told told : answer.builds().conflicts()) {
            Set<String> all = ids(told.conflict());
            assertThat(ranked(all, wishes).unbeaten()).as("%s", all).isEmpty();
            for (String one : all) {
                Set<String> rest = new HashSet<>(all);
                rest.remove(one);
                assertThat(ranked(rest, wishes).unbeaten())
                        .as("%s without %s", all, one)
                        .isNotEmpty();
            }
        }
    }

    /** Giving up a limit asks for no more than the best there is: a cent less and nothing is found. */
    @Test
    void theSmallestChangeIsTheSmallest() {
        List<BuildWish> none = List.of();
        long cheapest = ranked(Set.of("limit:coolant", "limit:noise"), none).unbeaten().stream()
                .mapToLong(r -> r.build().outcome().priceCents())
                .min()
                .orElseThrow();
        BuildWish wish = new BuildWish("price=1000", Figure.PRICE, 100_000);

        BuildWhy.Given way = why(wish).builds().waysOut().stream()
                .filter(g -> g.changes().size() == 1)
                .findFirst()
                .orElseThrow();

        assertThat(way.changes().get(0).id()).isEqualTo("wish:price=1000");
        assertThat(way.build().outcome().priceCents()).isEqualTo(cheapest);
        assertThat(way.changes().get(0).lack().orElseThrow().amount()).isEqualTo((cheapest - 100_000) / 100.0);
        assertThat(way.changes().get(0).lack().orElseThrow().unit()).isEqualTo("EUR");
    }

    @Test
    void aConflictAboutTheCoolantNamesWhatKeepsItWarm() {
        BuildWhy.Told told = why(new BuildWish("coolant=27C", Figure.COOLANT, 27)).builds().conflicts().stream()
                .filter(t -> !t.causes().isEmpty())
                .findFirst()
                .orElseThrow();

        assertThat(told.causes().get(0).gainK())
                .isGreaterThanOrEqualTo(
                        told.causes().get(told.causes().size() - 1).gainK())
                .isPositive();
        assertThat(told.causes().stream().map(Cause::name))
                .isSubsetOf(
                        "too little radiator area",
                        "too little free area",
                        "too little coolant flow (pump)",
                        "air warmed inside before the radiators that blow out");
        assertThat(told.conflict().facts().get(0).sentence())
                .startsWith("you want coolant at most 27 C at full load; the rest allows coolant at ")
                .endsWith(" K short");
    }

    @Test
    void whatCanBeHadIsABuildWithinIt() {
        BuildWhy builds = why(new BuildWish("coolant=39C", Figure.COOLANT, 39)).builds();

        assertThat(builds.had()).isPresent();
        assertThat(builds.had().orElseThrow().outcome().coolantOverRoomCentiK()).isLessThanOrEqualTo(1400);
        assertThat(builds.conflicts()).isEmpty();
        assertThat(builds.waysOut()).isEmpty();
    }
}
