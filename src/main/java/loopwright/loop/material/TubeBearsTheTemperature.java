package loopwright.loop.material;

import java.util.Locale;
import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.MaterialPractice;

/** Rigid plastic tube is planned for a coolant that does not soften it. */
final class TubeBearsTheTemperature implements MaterialRule {

    @Override
    public String id() {
        return "material.tube-temperature";
    }

    @Override
    public String source() {
        return PRACTICE;
    }

    @Override
    public Said check(LoopMaterials loop) {
        Tube tube = loop.tube();
        if (tube.material().isEmpty()) {
            return tube.kind() == Tube.Kind.SOFT
                    ? Said.ok("soft tube bears any coolant that parts bear")
                    : Said.unknown("nobody says what " + tube.id() + " is made of");
        }
        Tube.Material material = tube.material().orElseThrow();
        if (material != Tube.Material.PETG && material != Tube.Material.ACRYLIC) {
            return Said.ok(tube.id() + " does not soften at what coolant reaches");
        }
        MaterialPractice practice = loop.practice();
        String rigid = material + " tube " + tube.id();
        double warmestC = loop.warmth().warmestC();
        if (warmestC > practice.plasticTubeMaxC()) {
            return Said.broken(rigid + " softens: coolant reaches " + text(warmestC) + " C, it bears "
                    + text(practice.plasticTubeMaxC()));
        }
        if (warmestC > practice.plasticTubeDesignC()) {
            return Said.warn(rigid + ": coolant reaches " + text(warmestC) + " C, planned for at most "
                    + text(practice.plasticTubeDesignC()));
        }
        return loop.warmth().limitC() > practice.plasticTubeDesignC()
                ? Said.warn(rigid + ": coolant reaches " + text(warmestC) + " C, but the brief would allow "
                        + text(loop.warmth().limitC()) + ", more than the " + text(practice.plasticTubeDesignC())
                        + " it is planned for")
                : Said.ok(rigid + ": coolant reaches " + text(warmestC) + " C, planned for "
                        + text(practice.plasticTubeDesignC()) + ", bears " + text(practice.plasticTubeMaxC()));
    }

    private static String text(double celsius) {
        return String.format(Locale.ROOT, "%.1f", celsius).replaceAll("\\.0$", "");
    }
}
