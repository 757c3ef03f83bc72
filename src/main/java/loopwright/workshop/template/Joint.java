package loopwright.workshop.template;

import loopwright.catalog.chassis.Panel;
import loopwright.catalog.standard.Cutting;
import loopwright.catalog.standard.Standards;

/**
 * The joint round a sheet that lies flush in an opening, at one pair of edges: how wide it is, bare and painted, how even.
 *
 * <p>After paint each joint is the fit allowance and half of what warmth does to the sheet against its surround; before
 * paint it is wider by two films, one on either edge.
 *
 * @param bareHmm as cut, hundredths of a millimetre
 * @param paintedHmm with a film of paint on both edges
 * @param unevenHmm how much either may be off, as cut: both edges by what a cut may be off
 */
public record Joint(int bareHmm, int paintedHmm, int unevenHmm) {

    /** Metres in a micrometre. */
    private static final double M_PER_UM = 1e-6;

    /**
     * How much longer a length gets, millimetres.
     *
     * @param lengthMm at rest, 0 or more
     * @param perMK expansion, micrometres a metre and kelvin, 0 or more
     * @param riseK warmer by so much
     */
    public static double playMm(double lengthMm, double perMK, double riseK) {
        if (!(lengthMm >= 0 && perMK >= 0)) {
            throw new IllegalArgumentException(
                    "length and expansion must be 0 or more but were " + lengthMm + " mm, " + perMK);
        }
        return lengthMm * perMK * M_PER_UM * riseK;
    }

    /** The joint at the ends of a length. */
    static Joint of(Setting setting, int lengthHmm, Panel.Material sheet, Panel.Material surround) {
        Cutting.Joint rule = setting.cutting().joint();
        double differs = Math.abs(expansion(setting, sheet) - expansion(setting, surround));
        double play = playMm(lengthHmm / 100.0, differs, rule.swingK());
        int painted = (int) Math.ceil((rule.fitMm() + play / 2) * 100 - 1e-9);
        int film = Cutting.hmm(rule.filmMm());
        return new Joint(
                painted + 2 * film,
                painted,
                2 * Cutting.hmm(setting.cutting().off().cutMm()));
    }

    /** Expansion of a material, micrometres a metre and kelvin; 0 where the standards do not say. */
    private static double expansion(Setting setting, Panel.Material material) {
        return setting.catalog().standards().expansions().stream()
                .filter(e -> e.material() == material)
                .mapToDouble(Standards.Expansion::expansionUmPerMK)
                .findFirst()
                .orElse(0);
    }
}
