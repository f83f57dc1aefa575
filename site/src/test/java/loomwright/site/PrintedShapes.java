package loomwright.site;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The boxes round all lines of a print, in millimetres on the paper. */
final class PrintedShapes extends PDFGraphicsStreamEngine {
    private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

    private final List<Rectangle2D> boxes = new ArrayList<>();
    private GeneralPath path = new GeneralPath();

    private PrintedShapes(PDPage page) {
        super(page);
    }

    static List<Rectangle2D> of(PDDocument document) throws IOException {
        List<Rectangle2D> boxes = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            PrintedShapes shapes = new PrintedShapes(page);
            shapes.processPage(page);
            boxes.addAll(shapes.boxes);
        }
        return boxes;
    }

    private void keep() {
        Rectangle2D box = path.getBounds2D();
        boxes.add(new Rectangle2D.Double(
                box.getX() * MILLIMETRES_PER_POINT, box.getY() * MILLIMETRES_PER_POINT, box.getWidth() * MILLIMETRES_PER_POINT,
                box.getHeight() * MILLIMETRES_PER_POINT));
        path = new GeneralPath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path = new GeneralPath();
    }

    @Override
    public void strokePath() {
        keep();
    }

    @Override
    public void fillPath(int windingRule) {
        path = new GeneralPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        keep();
    }

    @Override
    public void clip(int windingRule) {
        // What is drawn counts, not what it is clipped to.
    }

    @Override
    public void drawImage(PDImage image) {
        // Drawings are lines.
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // Drawings are lines.
    }
}
