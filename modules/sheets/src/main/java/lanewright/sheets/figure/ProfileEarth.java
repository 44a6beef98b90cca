package lanewright.sheets.figure;

import java.util.Set;
import lanewright.lane.section.Section;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/** What is dug and built up at the lane's line, in a profile. */
final class ProfileEarth {

    private final Stretch stretch;
    private final Scale scale;

    ProfileEarth(Stretch stretch, Scale scale) {
        this.stretch = stretch;
        this.scale = scale;
    }

    /** Between stripped ground and subgrade at the line: dug where the ground is higher. */
    void draw(Pen pen, Set<Role> drawn) {
        for (int i = 1; i < stretch.sections().size(); i++) {
            Section a = stretch.sections().get(i - 1);
            Section b = stretch.sections().get(i);
            double groundA = Stretch.stripped(a);
            double groundB = Stretch.stripped(b);
            double subA = Stretch.subgrade(a);
            double subB = Stretch.subgrade(b);
            if (b.station() > a.station() && Double.isFinite(groundA + groundB + subA + subB)) {
                drawn.add(groundA - subA + groundB - subB >= 0 ? Role.CUT : Role.FILL);
                piece(pen, a.station(), b.station(), groundA - subA, groundB - subB, subA, subB);
            }
        }
    }

    private void piece(
            Pen pen,
            double from,
            double to,
            double digFrom,
            double digTo,
            double subFrom,
            double subTo) {
        if (digFrom * digTo < 0) {
            double part = digFrom / (digFrom - digTo);
            double middle = from + part * (to - from);
            double sub = subFrom + part * (subTo - subFrom);
            piece(pen, from, middle, digFrom, 0, subFrom, sub);
            piece(pen, middle, to, 0, digTo, sub, subTo);
            return;
        }
        Role role = digFrom + digTo >= 0 ? Role.CUT : Role.FILL;
        pen.area(
                role,
                Outline.closed(
                        scale.x(from),
                        scale.y(subFrom),
                        scale.x(from),
                        scale.y(subFrom + digFrom),
                        scale.x(to),
                        scale.y(subTo + digTo),
                        scale.x(to),
                        scale.y(subTo)));
    }
}
