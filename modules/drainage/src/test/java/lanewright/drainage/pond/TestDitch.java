package lanewright.drainage.pond;

/** A straight V ditch in a plane, the way a lane's ditch lies: 3:1 to the lane, 2:1 behind. */
public final class TestDitch {

    private TestDitch() {}

    /** Sides and bottom, across, m from the bottom: far ground, top, bottom, top, far ground. */
    private static final double[] ACROSS = {-15, -1.2, 0, 0.8, 15};

    private static final double[] RISE = {0.4 + 0.3, 0.4, 0, 0.4, 0.4 + 0.3};

    /** A ditch 60 m long that falls at {@code grade}, turned from the x axis by an angle. */
    public static ArrayMesh falling(double grade, double degrees) {
        double cos = StrictMath.cos(StrictMath.toRadians(degrees));
        double sin = StrictMath.sin(StrictMath.toRadians(degrees));
        int along = 40;
        int across = ACROSS.length;
        double[][] points = new double[(along + 1) * across][];
        for (int i = 0; i <= along; i++) {
            double s = 1.5 * i;
            for (int j = 0; j < across; j++) {
                double t = ACROSS[j];
                points[i * across + j] =
                        new double[] {
                            s * cos - t * sin, s * sin + t * cos, 100 - grade * s + RISE[j]
                        };
            }
        }
        int[][] triangles = new int[2 * along * (across - 1)][];
        int n = 0;
        for (int i = 0; i < along; i++) {
            for (int j = 0; j + 1 < across; j++) {
                int a = i * across + j;
                int b = a + across;
                triangles[n++] = new int[] {a, b, b + 1};
                triangles[n++] = new int[] {a, b + 1, a + 1};
            }
        }
        return new ArrayMesh(points, triangles);
    }
}
