package loopwright.catalog.check;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.basis.PartFace;
import loopwright.catalog.basis.PartPort;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/** A port lies in the face it looks out of, and a part with ports lets coolant in at one and out at another. */
final class PortsAreOnTheirFace implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Block> part : items.of(Block.class)) {
            check(part.item(), part.value().body(), part.value().ports(), Optional.empty(), problems);
        }
        for (Items.Placed<GraphicsCard> part : items.of(GraphicsCard.class)) {
            GraphicsCard.Body body = part.value().body();
            SizeMm size = new SizeMm(body.lengthMm(), body.thicknessMm(), body.heightMm());
            check(part.item(), size, part.value().ports(), Optional.empty(), problems);
        }
        for (Items.Placed<Pump> part : items.of(Pump.class)) {
            check(
                    part.item(),
                    part.value().body(),
                    part.value().ports(),
                    part.value().fill(),
                    problems);
        }
        for (Items.Placed<Reservoir> part : items.of(Reservoir.class)) {
            check(
                    part.item(),
                    part.value().body(),
                    part.value().ports(),
                    part.value().fill(),
                    problems);
        }
    }

    private static void check(
            Item item, SizeMm body, List<PartPort> ports, Optional<PartPort> fill, Problems problems) {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < ports.size(); i++) {
            String path = "ports[" + i + "]";
            onFace(item, path, body, ports.get(i), problems);
            if (!ids.add(ports.get(i).id())) {
                problems.add(item.problem(path + ".id", ports.get(i).id(), "ids of their own for a part's ports", ""));
            }
        }
        fill.ifPresent(f -> onFace(item, "fill", body, f, problems));
        if (!ports.isEmpty() && !goesThrough(ports)) {
            problems.add(item.problem(
                    "ports",
                    "no port in with another port out",
                    "at least two ports: one that may be in, another that may be out",
                    ""));
        }
    }

    private static boolean goesThrough(List<PartPort> ports) {
        return ports.stream()
                .filter(p -> p.way() != PartPort.Way.OUT)
                .anyMatch(in -> ports.stream().anyMatch(out -> !out.equals(in) && out.way() != PartPort.Way.IN));
    }

    private static void onFace(Item item, String path, SizeMm body, PartPort port, Problems problems) {
        Dimension[] at = {port.alongMm(), port.acrossMm(), port.overMm()};
        Dimension[] size = {body.lengthMm(), body.widthMm(), body.heightMm()};
        String[] fields = {"along_mm", "across_mm", "over_mm"};
        for (int axis = 0; axis < at.length; axis++) {
            if (at[axis].isUnknown() || size[axis].isUnknown()) {
                continue;
            }
            int value = at[axis].valueHmm();
            int most = size[axis].valueHmm();
            Optional<Integer> face = face(port.looks(), axis, most);
            if (face.isPresent() && value != face.get()) {
                problems.add(item.problem(
                        path + "." + fields[axis],
                        Hundredths.text(value),
                        Hundredths.text(face.get()) + ", where the face it looks out of lies",
                        ""));
            } else if (value < 0 || value > most) {
                problems.add(item.problem(
                        path + "." + fields[axis],
                        Hundredths.text(value),
                        "0 to " + Hundredths.text(most) + ", the body",
                        ""));
            }
        }
    }

    /** Where a face lies along one of length, width and height; empty where it is not square to it. */
    private static Optional<Integer> face(PartFace looks, int axis, int size) {
        int own = switch (looks) {
            case LENGTH_LOW, LENGTH_HIGH -> 0;
            case WIDTH_LOW, WIDTH_HIGH -> 1;
            case HEIGHT_LOW, HEIGHT_HIGH -> 2;
        };
        boolean high = looks == PartFace.LENGTH_HIGH || looks == PartFace.WIDTH_HIGH || looks == PartFace.HEIGHT_HIGH;
        return own == axis ? Optional.of(high ? size : 0) : Optional.empty();
    }
}
