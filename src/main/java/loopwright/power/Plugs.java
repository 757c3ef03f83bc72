package loopwright.power;

import java.util.List;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Drive.DriveForm;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Supply;

/**
 * Plugs of a supply, wanted or there.
 *
 * @param processor for the processor
 * @param cardEightPin 8-pin, for the card
 * @param cardSixteenPin 16-pin, for the card
 * @param sata for drives
 */
public record Plugs(int processor, int cardEightPin, int cardSixteenPin, int sata) {

    /** What processor, card and drives want. A drive on the board wants none. */
    public static Plugs wanted(Processor processor, GraphicsCard card, List<Drive> drives) {
        long withCable =
                drives.stream().filter(drive -> drive.form() != DriveForm.M2).count();
        return new Plugs(
                processor.heat().processorPlugs(),
                card.power().eightPinPlugs(),
                card.power().sixteenPinPlugs(),
                Math.toIntExact(withCable));
    }

    /** What a supply has. */
    public static Plugs of(Supply.Output output) {
        return new Plugs(
                output.processorPlugs(), output.cardEightPinPlugs(), output.cardSixteenPinPlugs(), output.sataPlugs());
    }

    /** Whether there are at least as many of each. */
    public boolean cover(Plugs wanted) {
        return processor >= wanted.processor
                && cardEightPin >= wanted.cardEightPin
                && cardSixteenPin >= wanted.cardSixteenPin
                && sata >= wanted.sata;
    }
}
