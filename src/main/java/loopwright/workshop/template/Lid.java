package loopwright.workshop.template;

import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.fit.MountFrame;
import loopwright.workshop.drawing.Area;

/**
 * A raised cover as it lies on a panel.
 *
 * @param outline its outer edge
 */
record Lid(Cover cover, RaisedCover raised, Mod mod, Area outline) {

    /** A cover of a mod on a mount. */
    static Lid of(Setting setting, Mod mod, RaisedCover raised, MountFrame frame, PanelView view) {
        Cover cover = setting.catalog().part(Cover.class, raised.cover());
        boolean across = frame.lengthwise() == view.right().axis();
        int length = cover.body().lengthMm().valueHmm();
        int width = cover.body().widthMm().valueHmm();
        Area outline = Area.round(
                view.dot(
                        frame.lengthwise(),
                        raised.lengthwiseMm().valueHmm(),
                        raised.sidewaysMm().valueHmm()),
                across ? length : width,
                across ? width : length);
        return new Lid(cover, raised, mod, outline);
    }
}
