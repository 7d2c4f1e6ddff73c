package railtrim.window.picture;

import railtrim.procedure.Words;

/** A picture that can be drawn on a sheet of any size from {@link PictureView#LEAST_WIDTH} × {@link PictureView#LEAST_HEIGHT} up. */
interface Drawing {
    void drawOn(Sheet sheet);

    Words words();

    /** What the picture shows, for people who do not see it. */
    String says();
}
