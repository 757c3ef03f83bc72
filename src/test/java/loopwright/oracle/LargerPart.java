package loopwright.oracle;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import loopwright.fit.Witness;
import loopwright.fit.rules.Chosen;
import loopwright.quantity.Dimension;

/**
 * A case in which nothing can be chosen but what a witness chose, with one part of another size: the same parts in the
 * same places, no mods but the witness's, and only such radiators and fans as are handed over.
 */
final class LargerPart {

    private final OracleCase question;
    private final Witness witness;

    LargerPart(OracleCase question, Witness witness) {
        this.question = question;
        this.witness = witness;
    }

    /** The case with a card of this length. */
    OracleCase card(int lengthHmm, Collection<Part> stacks) {
        return with(
                chosen(GraphicsCard.class, c -> {
                    GraphicsCard.Body b = c.body();
                    GraphicsCard.Body longer = new GraphicsCard.Body(
                            Dimension.ofHmm(lengthHmm),
                            b.thicknessMm(),
                            b.heightMm(),
                            b.topRoomMm(),
                            b.topRoomLengthMm());
                    return new GraphicsCard(
                            c.id(),
                            c.title(),
                            c.variantOf(),
                            c.buy(),
                            c.cooling(),
                            longer,
                            c.power(),
                            c.performance(),
                            c.electric(),
                            c.ports(),
                            c.massG());
                }),
                stacks);
    }

    /** The case with a supply of this length. */
    OracleCase supply(int lengthHmm, Collection<Part> stacks) {
        return with(
                chosen(
                        Supply.class,
                        s -> new Supply(
                                s.id(),
                                s.title(),
                                s.variantOf(),
                                s.buy(),
                                s.form(),
                                new SizeMm(
                                        Dimension.ofHmm(lengthHmm),
                                        s.body().widthMm(),
                                        s.body().heightMm()),
                                s.plugRoomMm(),
                                s.output(),
                                s.rails(),
                                s.cables(),
                                s.noise(),
                                s.massG())),
                stacks);
    }

    /** The case with memory of this height. */
    OracleCase memory(int heightHmm, Collection<Part> stacks) {
        return with(
                chosen(
                        Memory.class,
                        m -> new Memory(
                                m.id(),
                                m.title(),
                                m.variantOf(),
                                m.buy(),
                                m.generation(),
                                Dimension.ofHmm(heightHmm),
                                m.modules(),
                                m.capacityGb())),
                stacks);
    }

    /** The case with the witness's own parts. */
    OracleCase asItIs(Collection<Part> stacks) {
        return with(new ArrayList<>(witness.parts().parts().values()), stacks);
    }

    /** A radiator of another thickness. */
    static Radiator thick(Radiator was, int thicknessHmm) {
        Radiator.Body body = was.body();
        return new Radiator(
                was.id() + "-" + thicknessHmm,
                was.title(),
                Optional.empty(),
                was.buy(),
                was.pattern(),
                new Radiator.Body(
                        body.widthMm(),
                        Dimension.ofHmm(thicknessHmm),
                        body.portOverhangMm(),
                        body.blankOverhangMm(),
                        body.seat(),
                        body.massG()),
                was.ports(),
                was.core());
    }

    private <P extends Part> List<Part> chosen(Class<P> kind, UnaryOperator<P> change) {
        Chosen parts = witness.parts();
        List<Part> out = new ArrayList<>();
        parts.parts().values().forEach(p -> out.add(kind.isInstance(p) ? change.apply(kind.cast(p)) : p));
        return out;
    }

    private OracleCase with(List<Part> parts, Collection<Part> stacks) {
        Map<String, Part> all = new TreeMap<>();
        for (Part part : question.catalog().parts().values()) {
            if (part instanceof Cover || part instanceof Drive || part instanceof Tube || part instanceof Coolant) {
                all.put(part.id(), part);
            }
        }
        parts.forEach(p -> all.put(p.id(), p));
        stacks.forEach(p -> all.put(p.id(), p));
        Chassis chassis = chassis();
        all.put(chassis.id(), chassis);
        Catalog was = question.catalog();
        Catalog catalog = new Catalog(was.version(), was.currency(), all, was.standards(), was.practice());
        return new OracleCase(question.seed(), catalog, chassis, brief());
    }

    private Chassis chassis() {
        Chassis was = question.chassis();
        Inside inside = was.inside();
        List<Place> places = inside.places().stream()
                .filter(p -> witness.places().stream().anyMatch(w -> w.place().equals(p.id())))
                .map(this::onlyFor)
                .toList();
        return new Chassis(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                was.shell(),
                new Inside(inside.board(), inside.obstructions(), inside.removables(), places),
                was.mounts(),
                was.mods());
    }

    /** The place, holding nothing but the kind of part that the witness put there. */
    private Place onlyFor(Place place) {
        String what = witness.places().stream()
                .filter(w -> w.place().equals(place.id()))
                .findFirst()
                .orElseThrow()
                .what();
        List<Place.Holds> holds = place.holds().stream()
                .filter(h -> switch (h) {
                    case ATX, SFX, SFX_L -> what.equals("supply");
                    case D2_5, D3_5 -> what.startsWith("drive");
                    case PUMP, PUMP_RESERVOIR -> what.equals("pump");
                    case RESERVOIR -> what.equals("reservoir");
                })
                .toList();
        return new Place(
                place.id(), place.title(), holds, place.pose(), place.inside(), place.against(), place.touches());
    }

    private Brief brief() {
        Brief was = question.brief();
        LoopWish loop = was.loop();
        BriefLimits limits = was.limits();
        List<String> others = question.chassis().mods().stream()
                .map(Mod::id)
                .filter(id -> !witness.mods().ids(question.chassis()).contains(id))
                .toList();
        return new Brief(
                was.id(),
                was.title(),
                was.client(),
                was.chassis(),
                was.parts(),
                new LoopWish(
                        Optional.empty(),
                        Optional.empty(),
                        loop.pumps(),
                        loop.reservoirs(),
                        loop.tube(),
                        loop.tubeM(),
                        loop.coolant(),
                        loop.coolantL(),
                        loop.run()),
                new BriefLimits(
                        limits.budgetCents(),
                        limits.roomC(),
                        limits.coolantMaxC(),
                        limits.noiseMaxDBA(),
                        limits.labourMaxH(),
                        limits.leadMaxDays(),
                        limits.freeAreaMin(),
                        new BriefLimits.ModLimits(others, Optional.empty(), Optional.empty(), false),
                        limits.heat()),
                was.terms());
    }
}
