package loopwright.oracle;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.brief.Wanted;

/** The demo's short tower with the demo's brief, reduced so that slower engines are done in seconds. */
final class DemoQuestion {

    private DemoQuestion() {}

    /** One part in most roles; two supplies, three radiators, two fans. */
    static OracleCase reduced() {
        Catalog catalog = CatalogReader.read(Path.of("catalogs"));
        Brief demo = CatalogReader.readBrief(Path.of("scenarios/demo.yaml"), catalog);
        Wanted parts = new Wanted(
                only("board-mini-s2-low"),
                only("cpu-s2-8"),
                only("gpu-mid-block"),
                only("mem-g5-32-low"),
                demo.parts().drives(),
                only("block-jet-a"),
                Optional.of(any("supply-atx-750", "supply-sfx-l-650")));
        LoopWish loop = new LoopWish(
                Optional.of(any("rad-2x120-30a", "rad-2x140-30a", "rad-2x140-45a")),
                Optional.of(any("fan-120-25-1300", "fan-140-25-1200")),
                Optional.of(any("combo-tube-150")),
                Optional.of(any("res-cube")),
                demo.loop().tube(),
                demo.loop().tubeM(),
                demo.loop().coolant(),
                demo.loop().coolantL(),
                demo.loop().run());
        Brief reduced = new Brief(
                "demo-reduced",
                "the demo's brief, reduced",
                demo.client(),
                demo.chassis(),
                parts,
                loop,
                demo.limits(),
                demo.terms());
        return new OracleCase(0, catalog, catalog.chassis("short-tower"), reduced);
    }

    private static Choice only(String id) {
        return any(id);
    }

    private static Choice any(String... ids) {
        return new Choice(List.of(ids), Optional.empty());
    }

    /** The same, with mods forbidden and cuts unlimited. */
    static OracleCase forbidding(OracleCase question, List<String> mods) {
        Brief brief = question.brief();
        BriefLimits limits = brief.limits();
        BriefLimits fewer = new BriefLimits(
                limits.budgetCents(),
                limits.roomC(),
                limits.coolantMaxC(),
                limits.noiseMaxDBA(),
                limits.labourMaxH(),
                limits.leadMaxDays(),
                limits.freeAreaMin(),
                new BriefLimits.ModLimits(mods, Optional.empty(), Optional.empty(), false),
                limits.heat());
        Brief narrowed = new Brief(
                brief.id(),
                brief.title(),
                brief.client(),
                brief.chassis(),
                brief.parts(),
                brief.loop(),
                fewer,
                brief.terms());
        return new OracleCase(question.seed(), question.catalog(), question.chassis(), narrowed);
    }
}
