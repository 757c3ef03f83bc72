package loopwright.answer.mass;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.standard.CarryPractice;

/**
 * A chassis's own mass, spread over the six faces of its interior: each by its area times its panel's thickness and
 * density. A face without a panel of its own counts as steel as thick as the thinnest panel listed. Assumed: frame, trim
 * and screws lie where the sheets lie.
 */
final class ShellMass {

    /** Sheet where a chassis lists no panel at all, hundredths of a millimetre; assumed. */
    private static final int SHEET_HMM = 80;

    private static final double HMM_PER_MM = 100;

    private ShellMass() {}

    static List<Mass> of(Shell shell, double massKg, CarryPractice.Densities densities) {
        double width = shell.interior().widthMm().valueHmm() / HMM_PER_MM;
        double depth = shell.interior().depthMm().valueHmm() / HMM_PER_MM;
        double height = shell.interior().heightMm().valueHmm() / HMM_PER_MM;
        Map<Face, Double> weights = new EnumMap<>(Face.class);
        double sum = 0;
        for (Face face : Face.values()) {
            double area = switch (face.normal()) {
                case X -> depth * height;
                case Y -> width * height;
                case Z -> width * depth;
            };
            double weight = area * sheet(shell, face, densities);
            weights.put(face, weight);
            sum += weight;
        }
        List<Mass> out = new ArrayList<>();
        for (Face face : Face.values()) {
            double far = face.isHigh() ? 1 : 0;
            Mass.Spot at = switch (face.normal()) {
                case X -> new Mass.Spot(far * width, depth / 2, height / 2);
                case Y -> new Mass.Spot(width / 2, far * depth, height / 2);
                case Z -> new Mass.Spot(width / 2, depth / 2, far * height);
            };
            out.add(new Mass("chassis", massKg * weights.getOrDefault(face, 0.0) / sum, at));
        }
        return out;
    }

    /** Thickness times density. */
    private static double sheet(Shell shell, Face face, CarryPractice.Densities densities) {
        Optional<Panel> panel =
                shell.panels().stream().filter(p -> p.face() == face).findFirst();
        int thinnest = shell.panels().stream()
                .mapToInt(p -> p.thicknessMm().valueHmm())
                .min()
                .orElse(SHEET_HMM);
        return panel.map(p -> p.thicknessMm().valueHmm() * density(p.material(), densities))
                .orElse(thinnest * densities.steelKgPerM3());
    }

    private static double density(Panel.Material material, CarryPractice.Densities densities) {
        return switch (material) {
            case STEEL -> densities.steelKgPerM3();
            case ALUMINIUM -> densities.aluminiumKgPerM3();
            case PLASTIC -> densities.plasticKgPerM3();
            case ACRYLIC -> densities.acrylicKgPerM3();
            case GLASS -> densities.glassKgPerM3();
        };
    }
}
