package loopwright.catalog.check;

import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Drive.DriveForm;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.StandardElectric;
import loopwright.catalog.standard.Standards;

/**
 * What a drive draws is in order, and through its SATA plug it draws no more than the contacts carry: 5 V at work, and on 12 V what it
 * draws at its start beyond that. A drive on the board has no such plug.
 */
final class DriveStartsWithinPlug implements Check {

    private static final double TWELVE_V = 12;
    private static final double FIVE_V = 5;

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Drive> drive : items.of(Drive.class)) {
            drive.value().electric().ifPresent(electric -> {
                inOrder(drive, electric, problems);
                items.findOnly(Standards.class)
                        .flatMap(Standards::electric)
                        .filter(s -> drive.value().form() != DriveForm.M2)
                        .ifPresent(s -> contacts(drive, electric, s.sata(), problems));
            });
        }
    }

    private static void inOrder(Items.Placed<Drive> drive, Drive.Electric electric, Problems problems) {
        double workW = drive.value().heatW();
        if (!(electric.lowW() <= workW)) {
            note(drive, "low_W", electric.lowW(), "at most its heat_W, " + Curve.plain(workW), problems);
        }
        if (!(electric.startW() >= workW)) {
            note(drive, "start_W", electric.startW(), "at least its heat_W, " + Curve.plain(workW), problems);
        }
        if (!(electric.idleW() <= workW)) {
            note(drive, "idle_W", electric.idleW(), "at most its heat_W, " + Curve.plain(workW), problems);
        }
    }

    private static void contacts(
            Items.Placed<Drive> drive, Drive.Electric electric, StandardElectric.SataPlug sata, Problems problems) {
        double mostA = sata.contactA() * sata.contacts();
        if (!(electric.lowW() <= mostA * FIVE_V)) {
            note(
                    drive,
                    "low_W",
                    electric.lowW(),
                    "at most " + Curve.plain(mostA * FIVE_V) + " W on a SATA plug's 5 V",
                    problems);
        }
        if (!(electric.startW() - electric.lowW() <= mostA * TWELVE_V)) {
            note(
                    drive,
                    "start_W",
                    electric.startW(),
                    "at most " + Curve.plain(mostA * TWELVE_V) + " W on a SATA plug's 12 V beyond low_W",
                    problems);
        }
    }

    private static void note(Items.Placed<Drive> drive, String field, double found, String allowed, Problems problems) {
        problems.add(drive.item().problem("electric." + field, Curve.plain(found), allowed, ""));
    }
}
