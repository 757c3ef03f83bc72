package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Panel;
import loopwright.quantity.Dimension;
import loopwright.workshop.drawing.Dot;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PanelViewTest {

    private static final List<Axis> AXES = List.of(Axis.X, Axis.Y, Axis.Z);

    private static final Chassis CHASSIS = Demo.CATALOG.chassis("short-tower");

    private static PanelView view(Face face, boolean outside) {
        Panel panel = new Panel(
                "panel",
                face,
                Dimension.ofHmm(80),
                Panel.Material.STEEL,
                new Panel.Patch(Optional.empty(), Optional.empty(), Optional.empty()),
                new Panel.Features(List.of(), List.of(), List.of(), List.of()));
        return outside ? PanelView.outside(CHASSIS, panel) : PanelView.inside(CHASSIS, panel);
    }

    private static int[] vector(PanelView.Way way) {
        int[] out = new int[3];
        out[AXES.indexOf(way.axis())] = way.sign();
        return out;
    }

    /** Who stands outside and looks at the panel sees right × up come towards him. */
    @ParameterizedTest
    @EnumSource(Face.class)
    void looksAtThePanelFromOutside(Face face) {
        int[] r = vector(view(face, true).right());
        int[] u = vector(view(face, true).up());
        int[] towards = {r[1] * u[2] - r[2] * u[1], r[2] * u[0] - r[0] * u[2], r[0] * u[1] - r[1] * u[0]};
        int[] outwards = new int[3];
        outwards[AXES.indexOf(face.normal())] = face.isHigh() ? 1 : -1;
        assertThat(towards).isEqualTo(outwards);
    }

    @ParameterizedTest
    @EnumSource(Face.class)
    void swapsLeftAndRightAgainstInside(Face face) {
        PanelView outside = view(face, true);
        PanelView inside = view(face, false);
        Axis across = outside.right().axis();
        Dot hole = inside.dot(across, 3000, 5000);
        Dot same = outside.dot(across, 3000, 5000);
        boolean leftInside = hole.xHmm() < inside.walls().centre().xHmm();
        boolean leftOutside = same.xHmm() < outside.walls().centre().xHmm();
        assertThat(leftOutside).isNotEqualTo(leftInside);
        assertThat(same.yHmm()).isEqualTo(hole.yHmm());
    }

    /** By hand: the rear of a case, looked at from behind: what is left from the front is right. */
    @ParameterizedTest
    @EnumSource(
            names = {"REAR", "FLOOR"},
            value = Face.class)
    void showsTheCasesLeftAtTheRight(Face face) {
        PanelView view = view(face, true);
        assertThat(view.dot(Axis.X, 0, 0).xHmm())
                .isGreaterThan(view.dot(Axis.X, 20_000, 0).xHmm());
        assertThat(view.edgeWords(view.right(), false)).isEqualTo("right");
        assertThat(view.edgeWords(view.right(), true)).isEqualTo("left");
    }
}
