package loopwright.catalog.check;

import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Supply;
import loopwright.catalog.read.Problems;

/** Where a supply's cables are given, they carry as many plugs as it says it has. */
final class PlugsAgreeWithCables implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Supply> supply : items.of(Supply.class)) {
            if (!supply.value().cables().isEmpty()) {
                Supply.Output output = supply.value().output();
                check(supply, "processor_plugs", Plug.PROCESSOR_8, output.processorPlugs(), problems);
                check(supply, "card_eight_pin_plugs", Plug.CARD_8, output.cardEightPinPlugs(), problems);
                check(supply, "card_sixteen_pin_plugs", Plug.CARD_16, output.cardSixteenPinPlugs(), problems);
                check(supply, "sata_plugs", Plug.SATA, output.sataPlugs(), problems);
            }
        }
    }

    private static void check(Items.Placed<Supply> supply, String field, Plug plug, int said, Problems problems) {
        int counted = supply.value().cables().stream()
                .filter(c -> c.plug() == plug)
                .mapToInt(Supply.Cable::plugs)
                .sum();
        if (counted != said) {
            problems.add(supply.item()
                    .problem(
                            "output." + field,
                            Integer.toString(said),
                            "the " + counted + " that its cables carry",
                            "Is a cable missing?"));
        }
    }
}
