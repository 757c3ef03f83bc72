package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.catalog.standard.MaterialPractice;
import loopwright.fit.rules.Role;
import loopwright.loop.Machine;
import loopwright.loop.material.Finding;
import loopwright.loop.material.LoopMaterials;
import loopwright.loop.material.MaterialRules;
import loopwright.loop.material.Wetted;

/** What coolant touches in a build, and whether it bears it. */
public final class BuildMaterials {

    private BuildMaterials() {}

    /** What each rule says of a build. */
    public static List<Finding> of(Inspection inspection) {
        return MaterialRules.of(loop(inspection));
    }

    static LoopMaterials loop(Inspection inspection) {
        Machine.Water water = inspection.machine().water();
        Brief brief = inspection.fitCase().brief();
        List<LoopMaterials.Piece> pieces = new ArrayList<>();
        for (Machine.BlockAt block : water.blocks()) {
            String part = block.name().equals(Machine.PROCESSOR)
                    ? inspection.build().chosen().the(Role.BLOCK, Block.class).id()
                    : block.part();
            pieces.add(new LoopMaterials.Piece(
                    block.name() + " " + part,
                    Wetted.of(block.flow().metal()),
                    true,
                    block.flow().channelMm()));
        }
        for (Machine.FanMount mount : inspection.machine().mounts()) {
            mount.radiator()
                    .ifPresent(r -> pieces.add(new LoopMaterials.Piece(
                            mount.mount() + " radiator " + r.radiator().id(),
                            Wetted.of(r.radiator().ports().metal()),
                            false,
                            Optional.empty())));
        }
        return new LoopMaterials(
                pieces,
                fittings(inspection, water.runs().tube()),
                water.runs().tube(),
                water.coolant(),
                brief.loop().addedBiocides(),
                new LoopMaterials.Warmth(
                        inspection.state().water().warmestC(), brief.limits().coolantMaxC()),
                inspection.fitCase().catalog().practice().materials().orElse(MaterialPractice.USUAL));
    }

    /** Those that the brief names, else all of the catalogue that go with the tube and would be bought. */
    private static LoopMaterials.Fittings fittings(Inspection inspection, Tube tube) {
        List<String> named = inspection
                .fitCase()
                .brief()
                .loop()
                .fittings()
                .map(Choice::anyOf)
                .orElse(List.of());
        return new LoopMaterials.Fittings(
                inspection.fitCase().catalog().all(TubeFitting.class).stream()
                        .filter(f -> named.isEmpty() ? takes(f, tube) && f.isSoundInCopper() : named.contains(f.id()))
                        .map(f -> new LoopMaterials.FittingPiece(f.id(), Wetted.of(f.wetted())))
                        .toList(),
                !named.isEmpty());
    }

    private static boolean takes(TubeFitting fitting, Tube tube) {
        return fitting.tubeBoreMm()
                        .map(b -> b.valueHmm() == tube.boreMm().valueHmm())
                        .orElse(true)
                && fitting.tubeOutsideMm()
                        .map(o -> o.valueHmm() == tube.outsideMm().valueHmm())
                        .orElse(true);
    }
}
