package loopwright.workshop.assembly;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.answer.Inspection;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Drive;
import loopwright.catalog.standard.Fastening.FixedScrews;
import loopwright.catalog.standard.Fastening.Holds;
import loopwright.fit.Witness.InPlace;
import loopwright.workshop.assembly.Piece.Screws;

/** Screws of the trade's fixed lengths: how many, and from where; no file says where their holes are. */
final class FixedScrewsOf {

    private FixedScrewsOf() {}

    /** What the practice says of them. */
    static Optional<FixedScrews> row(Inspection in, Holds holds) {
        return in.fitCase().catalog().practice().fastening().fixed().stream()
                .filter(f -> f.holds() == holds)
                .findFirst();
    }

    /** The screws of a part by its body's id. */
    static List<Screws> of(Inspection in, String id) {
        if (id.equals("card")) {
            return screws(in, Holds.CARD, "at its bracket");
        }
        Optional<Place> place = place(in, id);
        if (id.equals("supply")) {
            return screws(in, Holds.SUPPLY, place.map(FixedScrewsOf::mains).orElse("at its mains face"));
        }
        return id.startsWith("drive")
                ? screws(in, drive(in, id), place.map(FixedScrewsOf::drive).orElse(""))
                : List.of();
    }

    private static List<Screws> screws(Inspection in, Holds holds, String where) {
        return row(in, holds)
                .map(r -> List.of(new Screws(r.count(), where, List.of())))
                .orElse(List.of());
    }

    private static Optional<InPlace> inPlace(Inspection in, String id) {
        return in.witness().places().stream()
                .filter(p -> p.what().equals(id.replace(':', ' ')) || p.what().equals(id))
                .findFirst();
    }

    private static Optional<Place> place(Inspection in, String id) {
        return inPlace(in, id)
                .flatMap(at -> in.fitCase().chassis().inside().places().stream()
                        .filter(p -> p.id().equals(at.place()))
                        .findFirst());
    }

    /** A supply's length runs from its mains face. */
    private static String mains(Place place) {
        Face face = OutsideBoxes.opposite(BoardPieces.face(place.pose().length()));
        return place.against().contains(face)
                ? "from outside, " + face.name().toLowerCase(Locale.ROOT)
                : "at its mains face";
    }

    private static String drive(Place place) {
        String from = place.drive()
                .map(d -> d.from() == Place.DriveHold.From.SIDES ? "from both sides" : "from below")
                .orElse("where the place has its holes");
        return from + place.inside().map(i -> ", in its cage").orElse("");
    }

    private static Holds drive(Inspection in, String id) {
        boolean large = inPlace(in, id)
                .map(at -> in.fitCase().catalog().part(Drive.class, at.partId()))
                .filter(d -> d.form() == Drive.DriveForm.D3_5)
                .isPresent();
        return large ? Holds.DRIVE_LARGE : Holds.DRIVE_SMALL;
    }
}
