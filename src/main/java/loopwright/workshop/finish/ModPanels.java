package loopwright.workshop.finish;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.RaisedCover;

/** The panels that a mod works on: those of the mounts it names, and, for a window, the one that its rim lies on. */
final class ModPanels {

    private ModPanels() {}

    static Mount mount(Chassis chassis, String id) {
        return chassis.mounts().stream()
                .filter(m -> m.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static Panel panel(Chassis chassis, Mount mount) {
        return chassis.shell().panels().stream()
                .filter(p -> p.id().equals(mount.panel()))
                .findFirst()
                .orElseThrow();
    }

    /** Mounts whose panel a mod cuts, drills or covers, each once. */
    static List<Mount> mounts(Chassis chassis, Mod mod) {
        Mod.Effect effect = mod.effect();
        return Stream.of(
                        effect.seats().stream().map(ModSeat::mount),
                        effect.covers().stream().map(RaisedCover::mount),
                        effect.airways().stream()
                                .filter(a -> a.cut().isPresent())
                                .map(Airway::mount))
                .flatMap(s -> s)
                .distinct()
                .map(id -> mount(chassis, id))
                .toList();
    }

    static List<Panel> of(Chassis chassis, Mod mod) {
        Set<Panel> out = new LinkedHashSet<>();
        mounts(chassis, mod).forEach(m -> out.add(panel(chassis, m)));
        if (mod.kind() == Mod.Kind.CUT_WINDOW) {
            mod.effect().adds().stream()
                    .flatMap(b -> b.boxes().stream())
                    .forEach(box -> chassis.shell().panels().stream()
                            .filter(p -> liesOn(chassis, box, p.face()))
                            .forEach(out::add));
        }
        return List.copyOf(out);
    }

    private static boolean liesOn(Chassis chassis, Box box, Face face) {
        var interior = chassis.shell().interior();
        var span = switch (face.normal()) {
            case X -> box.xMm();
            case Y -> box.yMm();
            case Z -> box.zMm();
        };
        var size = switch (face.normal()) {
            case X -> interior.widthMm();
            case Y -> interior.depthMm();
            case Z -> interior.heightMm();
        };
        return face.isHigh()
                ? span.to().valueHmm() >= size.valueHmm()
                : span.from().valueHmm() <= 0;
    }
}
