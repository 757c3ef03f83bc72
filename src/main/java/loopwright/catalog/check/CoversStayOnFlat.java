package loopwright.catalog.check;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Practice;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/**
 * A raised cover's outline passes the flat of its panel by no more than the trade's allowance.
 *
 * <p>The outline needs no edge distance: that is a rule for cuts and holes, not for what lies on top.
 */
final class CoversStayOnFlat implements Check {

    @Override
    public void run(Items items, Problems problems) {
        items.findOnly(Practice.class).ifPresent(practice -> {
            int over = practice.room().coverEdgeMm().valueHmm();
            List<Cover> covers =
                    items.of(Cover.class).stream().map(Items.Placed::value).toList();
            for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
                for (int i = 0; i < chassis.value().mods().size(); i++) {
                    mod(chassis, i, covers, over, problems);
                }
            }
        });
    }

    private static void mod(
            Items.Placed<Chassis> chassis, int index, List<Cover> covers, int overHmm, Problems problems) {
        List<RaisedCover> raised = chassis.value().mods().get(index).effect().covers();
        for (int i = 0; i < raised.size(); i++) {
            RaisedCover one = raised.get(i);
            String path = "mods[" + index + "].effect.covers[" + i + "]";
            Optional<Cover> cover =
                    covers.stream().filter(c -> c.id().equals(one.cover())).findFirst();
            Optional<Mount> mount = PlacedSeat.findMount(chassis.value(), one.mount());
            Optional<Panel> panel = mount.flatMap(m -> PlacedSeat.findPanel(chassis.value(), m));
            if (cover.isEmpty() || mount.isEmpty() || panel.isEmpty()) {
                continue;
            }
            Axis along = mount.get().lengthwise();
            if (along == panel.get().face().normal()) {
                continue;
            }
            Axis across = PlacedSeat.sideways(mount.get(), panel.get());
            Cover.Body body = cover.get().body();
            Outline outline = new Outline(chassis, panel.get(), overHmm, problems);
            outline.check(path + ".lengthwise_mm", along, one.lengthwiseMm(), body.lengthMm());
            outline.check(path + ".sideways_mm", across, one.sidewaysMm(), body.widthMm());
        }
    }

    private record Outline(Items.Placed<Chassis> chassis, Panel panel, int overHmm, Problems problems) {

        void check(String path, Axis axis, Dimension centre, Dimension size) {
            Optional<Span> flat = panel.flat().along(axis);
            if (flat.isEmpty() || centre.isUnknown() || size.isUnknown()) {
                return;
            }
            Span span = flat.get();
            int low = centre.valueHmm() - size.valueHmm() / 2;
            int high = centre.valueHmm() + size.valueHmm() / 2;
            boolean lowOut = !span.from().isUnknown() && low < span.from().valueHmm() - overHmm;
            boolean highOut = !span.to().isUnknown() && high > span.to().valueHmm() + overHmm;
            if (lowOut || highOut) {
                problems.add(chassis.item()
                        .problem(
                                path,
                                "an outline from " + Hundredths.text(low) + " to " + Hundredths.text(high),
                                "at most " + Hundredths.text(overHmm) + " mm past the flat of panel \"" + panel.id()
                                        + "\", " + text(span.from()) + " to " + text(span.to()),
                                ""));
            }
        }

        private static String text(Dimension dimension) {
            return dimension.isUnknown() ? "unknown" : Hundredths.text(dimension.valueHmm());
        }
    }
}
