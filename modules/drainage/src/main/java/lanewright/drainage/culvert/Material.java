package lanewright.drainage.culvert;

/** What a barrel is made of. */
public enum Material {
    /** Corrugated steel or aluminium. */
    METAL("corrugated metal"),
    /** Corrugated polyethylene with a smooth inside. */
    PLASTIC("smooth-lined plastic"),
    /** Precast or poured concrete. */
    CONCRETE("concrete");

    private final String words;

    Material(String words) {
        this.words = words;
    }

    /** As it is called, and as it stands in the tables. */
    public String words() {
        return words;
    }

    static Material of(String words) {
        for (Material material : values()) {
            if (material.words.equals(words)) {
                return material;
            }
        }
        throw new IllegalArgumentException(
                "no barrel is made of \""
                        + words
                        + "\"; take corrugated metal, smooth-lined plastic or concrete");
    }
}
