package lanewright.survey.read;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.function.UnaryOperator;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.survey.Frame;
import lanewright.survey.SurveyException;

/**
 * A file that cannot be read as it stands, and what its owner is told.
 *
 * @param cause what is wrong with it, in a few words
 * @param name name of the file
 * @param holds what it is declared to hold
 * @param contents what stands in it, each character one byte
 * @param declared what is declared about it
 * @param epsg code of the frame, 0 for plain local coordinates
 * @param says the whole message
 */
record BadFile(
        String cause,
        String name,
        Holds holds,
        String contents,
        UnaryOperator<SurveyFile> declared,
        int epsg,
        String says) {

    /** Points in metres with headings, unless told otherwise. */
    static BadFile points(String cause, String text, String says) {
        return new BadFile(
                cause,
                "shots.csv",
                Holds.POINTS,
                new String(text.getBytes(UTF_8), ISO_8859_1),
                file -> file.unit(LengthUnit.METRE),
                0,
                says);
    }

    static BadFile geoJson(String cause, Holds holds, String text, String says) {
        return new BadFile(
                cause,
                "land.geojson",
                holds,
                new String(text.getBytes(UTF_8), ISO_8859_1),
                file -> file.unit(LengthUnit.METRE).local(true),
                0,
                says);
    }

    static BadFile grid(String cause, String text, String says) {
        return new BadFile(
                cause,
                "land.asc",
                Holds.GRID,
                new String(text.getBytes(UTF_8), ISO_8859_1),
                file -> file.unit(LengthUnit.METRE),
                0,
                says);
    }

    static BadFile probes(String cause, String text, String says) {
        return new BadFile(
                cause,
                "holes.csv",
                Holds.PROBES,
                new String(text.getBytes(UTF_8), ISO_8859_1),
                file -> file.unit(LengthUnit.METRE),
                0,
                says);
    }

    BadFile bytes(byte[] other) {
        String bytes = new String(other, ISO_8859_1);
        return new BadFile(cause, name, holds, bytes, declared, epsg, says);
    }

    BadFile named(String other) {
        return new BadFile(cause, other, holds, contents, declared, epsg, says);
    }

    BadFile holding(Holds other) {
        return new BadFile(cause, name, other, contents, declared, epsg, says);
    }

    BadFile declaring(UnaryOperator<SurveyFile> other) {
        return new BadFile(cause, name, holds, contents, other, epsg, says);
    }

    BadFile in(int code) {
        return new BadFile(cause, name, holds, contents, declared, code, says);
    }

    /** What is said when it is read; empty if nothing. */
    String message(Path folder) {
        SurveyFile file =
                declared.apply(
                        SurveyFile.of(
                                Written.bytes(folder, name, contents.getBytes(ISO_8859_1)), holds));
        try {
            Frame frame = epsg == 0 ? Frame.local() : Frame.epsg(epsg);
            SurveyReader.read(SurveyRequest.of(file).in(frame), Progress.NONE);
            return "";
        } catch (SurveyException refused) {
            return refused.getMessage().replace(folder.toString(), "folder");
        }
    }
}
