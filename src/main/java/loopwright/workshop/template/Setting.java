package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.Inspection;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Cutting;
import loopwright.fit.Shape;
import loopwright.fit.Witness;

/**
 * What templates are asked for.
 *
 * @param mods all that are done, in the chassis's order
 * @param hung what hangs where; empty where templates are asked for before anything is chosen
 */
public record Setting(Catalog catalog, Chassis chassis, List<Mod> mods, List<Hung> hung, Identity identity) {

    /**
     * A stack where it hangs: the centre of its pattern in chassis coordinates.
     *
     * @param shape what it is; empty where only its pattern is known
     * @param thread what its screws have; empty where that is not known
     */
    public record Hung(
            String mount,
            Pattern pattern,
            int alongHmm,
            int asideHmm,
            Optional<Shape> shape,
            Optional<ScrewThread> thread) {}

    /**
     * What it comes from, so that a sheet on the bench can be traced.
     *
     * @param date of issue as it should be printed; empty to be written by hand
     */
    public record Identity(String brief, String build, String catalogue, String date) {
        /** As one line. */
        public String line() {
            return brief + " / " + build + " / " + catalogue;
        }
    }

    /** Copies. */
    public Setting {
        mods = List.copyOf(mods);
        hung = List.copyOf(hung);
    }

    /** Of a build, where its witness has it. */
    public static Setting of(Inspection inspection) {
        Catalog catalog = inspection.fitCase().catalog();
        Chassis chassis = inspection.fitCase().chassis();
        List<Hung> hung = new ArrayList<>();
        for (Witness.At at : inspection.witness().stacks()) {
            String mount = at.stack().frame().mount().id();
            Shape shape = at.stack().shape();
            Optional<ScrewThread> thread =
                    inspection.build().parts().getOrDefault("radiator " + mount, List.of()).stream()
                            .findFirst()
                            .map(id -> catalog.part(Radiator.class, id)
                                    .body()
                                    .seat()
                                    .thread());
            hung.add(new Hung(mount, shape.pattern(), at.alongHmm(), at.asideHmm(), Optional.of(shape), thread));
        }
        return new Setting(
                catalog,
                chassis,
                inspection.build().mods().mods(chassis),
                hung,
                new Identity(
                        inspection.fitCase().brief().id(), inspection.build().key(), catalog.version(), ""));
    }

    /** What hangs on a mount. */
    Optional<Hung> on(String mount) {
        return hung.stream().filter(h -> h.mount().equals(mount)).findFirst();
    }

    /**
     * How the workshop cuts.
     *
     * @throws IllegalArgumentException if the practice does not say
     */
    Cutting cutting() {
        return catalog.practice()
                .cutting()
                .orElseThrow(() -> new IllegalArgumentException(
                        "practice.yaml says nothing of cutting: templates need its section \"cutting\""));
    }
}
