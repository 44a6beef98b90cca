package lanewright.drainage.pond;

/**
 * The part of one triangle that lies below a level: its area in plan and the volume of water on it.
 * Exact: the depth is linear on the triangle, so a corner cut off holds a third of its deepest
 * depth times its area.
 */
final class WetPart {

    private double area;
    private double volume;

    /** Area in plan, m². */
    double area() {
        return area;
    }

    /** Volume, m³. */
    double volume() {
        return volume;
    }

    /** Measures triangle {@code t} of {@code mesh} below {@code level}. */
    void of(Mesh mesh, int t, double level) {
        int a = mesh.corner(t, 0);
        int b = mesh.corner(t, 1);
        int c = mesh.corner(t, 2);
        double whole =
                ((mesh.x(b) - mesh.x(a)) * (mesh.y(c) - mesh.y(a))
                                - (mesh.x(c) - mesh.x(a)) * (mesh.y(b) - mesh.y(a)))
                        / 2;
        of(Math.abs(whole), level - mesh.z(a), level - mesh.z(b), level - mesh.z(c));
    }

    /**
     * Measures a triangle of area {@code whole} whose corners lie {@code da}, {@code db} and {@code
     * dc} below the level (negative: above), m.
     */
    void of(double whole, double da, double db, double dc) {
        int wet = (da > 0 ? 1 : 0) + (db > 0 ? 1 : 0) + (dc > 0 ? 1 : 0);
        if (wet == 3) {
            area = whole;
            volume = whole * (da + db + dc) / 3;
        } else if (wet == 0) {
            area = 0;
            volume = 0;
        } else if (wet == 1) {
            if (da > 0) {
                corner(whole, da, db, dc);
            } else if (db > 0) {
                corner(whole, db, dc, da);
            } else {
                corner(whole, dc, da, db);
            }
        } else if (!(da > 0)) {
            side(whole, da, db, dc);
        } else if (!(db > 0)) {
            side(whole, db, dc, da);
        } else {
            side(whole, dc, da, db);
        }
    }

    /** One corner is under water, {@code wet} deep; the others are dry. */
    private void corner(double whole, double wet, double dry1, double dry2) {
        area = whole * (wet / (wet - dry1)) * (wet / (wet - dry2));
        volume = area * wet / 3;
    }

    /** One corner is dry; the others are under water. Two triangles, so that nothing cancels. */
    private void side(double whole, double dry, double wet1, double wet2) {
        double along1 = wet1 / (wet1 - dry); // of the edge wet1 to dry, under water
        double along2 = wet2 / (wet2 - dry);
        double first = whole * along1; // wet1, wet2, water's edge towards dry on wet1's side
        double second = whole * (1 - along1) * along2;
        area = first + second;
        volume = first * (wet1 + wet2) / 3 + second * wet2 / 3;
    }
}
