package loopwright.paper;

import java.util.List;
import java.util.OptionalDouble;
import loopwright.answer.UnlockAnswer;
import loopwright.catalog.chassis.Chassis;

/** The lines at the head of a chassis: how much was looked at, the heat reckoned with, the coolant as delivered. */
final class UnlockHead {

    private UnlockHead() {}

    static List<String> lines(UnlockAnswer answer) {
        Chassis chassis = answer.fitCase().chassis();
        String state =
                answer.incompleteBecause().map(b -> "INCOMPLETE (" + b + ")").orElse("Complete");
        int layouts = answer.fits().fits().size();
        return Lines.wrap(
                "UNLOCK  ",
                chassis.title() + " (" + chassis.id() + "). " + state + ": "
                        + (layouts == 0
                                ? answer.incompleteBecause().isPresent()
                                        ? "nothing found yet. "
                                        : "nothing fits, with any mods. "
                                : "read off " + layouts + (layouts == 1 ? " layout" : " layouts") + " that fit. ")
                        + coolant(answer)
                        + TightWords.ofShortfalls(answer.fitCase())
                                .map(w -> " " + w)
                                .orElse(""));
    }

    private static String coolant(UnlockAnswer answer) {
        if (answer.heatW().isEmpty()) {
            return "No choice of the brief's parts goes together.";
        }
        String heat = "Heat " + Mm.rounded(answer.heatW().getAsDouble(), 0)
                + " W into the coolant, the least that the brief's parts give";
        if (answer.fits().fits().isEmpty()) {
            return heat + ".";
        }
        OptionalDouble overRoomK = answer.asDeliveredOverRoomK();
        return heat + "; as delivered the coolant gets "
                + (overRoomK.isPresent()
                        ? Kelvin.text(overRoomK.getAsDouble()) + Kelvin.plusMinus(answer.asDeliveredBand())
                                + " K over the room in steady state."
                        : "no radiator, so there is no temperature.");
    }
}
