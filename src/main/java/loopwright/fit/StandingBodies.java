package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.chassis.Place;
import loopwright.geometry.Body;
import loopwright.geometry.BodyBox;
import loopwright.geometry.SpaceBox;

/** Everything that takes space in a witness, where it stands: for what is planned in between. */
public final class StandingBodies {

    private StandingBodies() {}

    /** Built-in bodies, parts in the order board, memory, block, card, places, then stacks in the chassis's order. */
    public static List<StandingBody> of(FitCase fitCase, Witness witness) {
        Bodies bodies = new Bodies(fitCase);
        List<Integer> numbers = new ArrayList<>(bodies.builtIn(witness.mods()));
        PartSet parts = new PartSet(0, witness.parts(), List.of(witness.parts()));
        numbers.addAll(bodies.parts(parts, placing(fitCase, witness)));
        List<StandingBody> out = new ArrayList<>();
        for (int number : numbers) {
            Body body = bodies.get(number).body();
            out.add(new StandingBody(
                    body.id(), body.boxes().stream().map(SpaceBox::of).toList()));
        }
        for (Witness.At at : witness.stacks()) {
            out.add(stack(fitCase, at));
        }
        return List.copyOf(out);
    }

    private static StandingBody stack(FitCase fitCase, Witness.At at) {
        MountFrame frame = at.stack().frame();
        Body body = new StackBodies(frame, at.stack().shape(), fitCase.catalog().practice()).body();
        List<SpaceBox> boxes = new ArrayList<>();
        for (BodyBox box : body.boxes()) {
            SpaceBox here = SpaceBox.of(box)
                    .moved(shift(frame, Axis.X, at), shift(frame, Axis.Y, at), shift(frame, Axis.Z, at));
            boxes.add(new SpaceBox(
                    frame.mount().id() + " " + here.what(), here.room(), here.needHmm(), here.x(), here.y(), here.z()));
        }
        return new StandingBody(body.id(), boxes);
    }

    private static int shift(MountFrame frame, Axis axis, Witness.At at) {
        if (axis == frame.lengthwise()) {
            return at.alongHmm();
        }
        return axis == frame.sideways() ? at.asideHmm() : 0;
    }

    private static PlaceModel.Placing placing(FitCase fitCase, Witness witness) {
        List<Integer> drives = new ArrayList<>();
        int supply = PlaceModel.NOWHERE;
        int pump = PlaceModel.NOWHERE;
        int reservoir = PlaceModel.NOWHERE;
        for (Witness.InPlace part : witness.places()) {
            int place = indexOf(fitCase, part.place());
            switch (part.what()) {
                case "supply" -> supply = place;
                case "pump" -> pump = place;
                case "reservoir" -> reservoir = place;
                default -> drives.add(place);
            }
        }
        return new PlaceModel.Placing(0, supply, pump, reservoir, List.copyOf(drives));
    }

    private static int indexOf(FitCase fitCase, String place) {
        List<String> ids =
                fitCase.chassis().inside().places().stream().map(Place::id).toList();
        if (!ids.contains(place)) {
            throw new IllegalArgumentException("no place " + place);
        }
        return ids.indexOf(place);
    }
}
