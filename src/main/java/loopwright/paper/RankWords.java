package loopwright.paper;

import loopwright.answer.RankAnswer;
import loopwright.catalog.brief.Brief;
import loopwright.loop.Band;
import loopwright.quantity.Money;
import loopwright.rank.Build;

/** A build's figures in the builder's words. */
final class RankWords {

    private RankWords() {}

    /** {@code 2180 EUR}, whole units. */
    static String money(long cents, Brief brief) {
        Money money = new Money(cents, brief.terms().currency());
        return money.wholeUnits() + " " + money.currency();
    }

    /** {@code 39.2 +-2}: coolant with half its band. */
    static String coolant(RankAnswer answer, Build build) {
        Band band = answer.band(build);
        double roomC = answer.fitCase().brief().limits().roomC();
        return Mm.rounded(roomC + answer.coolantOverRoomK(build), 1) + " +-"
                + Mm.rounded((band.highK() - band.lowK()) / 2, 1);
    }

    /** Level at 1 m, dB(A); a build always has a pump that sounds. */
    static double levelDBA(Build build) {
        return build.outcome().sound().levelDBA().orElse(0);
    }

    /** {@code 1 build}, {@code 2 builds}. */
    static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** {@code 3 less}, {@code same}, {@code 2 more}; whole decibels. */
    static String difference(double decibels) {
        long whole = Math.round(decibels);
        if (whole == 0) {
            return "same";
        }
        return Math.abs(whole) + (whole < 0 ? " less" : " more");
    }
}
