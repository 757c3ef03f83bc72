package loopwright.answer.mass;

import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.CarryPractice;

/** What tube weighs by its material; of one that does not say, as clear soft tube. */
final class TubeDensity {

    private TubeDensity() {}

    static double kgPerM3(Tube tube, CarryPractice.Densities densities) {
        return switch (tube.material().orElse(Tube.Material.CLEAR_PVC)) {
            case CLEAR_PVC -> densities.softTubeKgPerM3();
            case EPDM -> densities.rubberTubeKgPerM3();
            case PETG -> densities.petgTubeKgPerM3();
            case ACRYLIC -> densities.acrylicKgPerM3();
            case GLASS -> densities.glassKgPerM3();
            case COPPER -> densities.copperKgPerM3();
        };
    }
}
