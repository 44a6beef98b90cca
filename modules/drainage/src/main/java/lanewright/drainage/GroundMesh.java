package lanewright.drainage;

import lanewright.drainage.pond.Mesh;
import lanewright.ground.Ground;

/** The ground as it is, as water sees it. */
record GroundMesh(Ground ground) implements Mesh {

    @Override
    public int vertexCount() {
        return ground.vertexCount();
    }

    @Override
    public double x(int vertex) {
        return ground.x(vertex);
    }

    @Override
    public double y(int vertex) {
        return ground.y(vertex);
    }

    @Override
    public double z(int vertex) {
        return ground.z(vertex);
    }

    @Override
    public int triangleCount() {
        return ground.triangleCount();
    }

    @Override
    public int corner(int triangle, int k) {
        return ground.corner(triangle, k);
    }

    @Override
    public int neighbour(int triangle, int k) {
        return ground.neighbour(triangle, k);
    }

    @Override
    public boolean isLine(int triangle, int k) {
        return ground.isBreak(triangle, k);
    }
}
