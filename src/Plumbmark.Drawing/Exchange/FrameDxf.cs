using System.Text;
using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Exchange;

/// <summary>Floor marks and frame as DXF, for drawing programs: millimetres, full size, x forward, y to the car's left, z up.</summary>
/// <remarks>
/// The open ASCII subset of release 12 (AC1009): POINT, LINE, CIRCLE and TEXT on named layers. Deviations are not exaggerated. A frame point without
/// a height is written without a z and stands on its own layer; release 12 knows no units, so a text says millimetres.
/// </remarks>
public static class FrameDxf
{
    private const double MarkRadius = 4; // millimetres, to be seen
    private const double TextHeight = 20; // millimetres
    private static readonly (string Name, int Colour)[] s_layers =
    [
        ("CENTRE", 8),
        ("FLOOR_MARKS", 5),
        ("FRAME", 7),
        ("FRAME_NO_HEIGHT", 7),
        ("NAMES", 7),
        ("READINGS", 9),
        ("SKETCH_ONLY", 8),
    ];

    /// <summary>The file: 7-bit ASCII, CRLF. The same input gives the same bytes.</summary>
    public static byte[] Write(CarFile car, FloorAnswer answer)
    {
        var seen = FloorPlaces.Of(car, answer).Select(p => Seen.In(FloorView.Plan, p)).OfType<Seen>().ToList();
        var scene = new FloorScene(car, answer, new FloorDrawingOptions(), FloorView.Plan, seen, new Figure(new Spot(0, 0), 1, 1));
        var dxf = new DxfText();
        dxf.Comment(Texts.Say("drawing.frame-dxf.plumbmark-millimetres-full-size-x", FloorWords.NameOf(car)));
        dxf.Header();
        dxf.Layers(s_layers);
        dxf.BeginEntities();
        CentreLine(dxf, seen);
        foreach (var point in seen)
        {
            PointAndName(dxf, point);
        }

        foreach (var (from, to) in FrameLines.Segments(scene))
        {
            FrameLine(dxf, from.Placed, to.Placed);
        }

        Readings(dxf, car, scene);
        return Encoding.ASCII.GetBytes(dxf.End());
    }

    private static void CentreLine(DxfText dxf, List<Seen> seen)
    {
        if (seen.Count == 0)
        {
            return;
        }

        var (rear, front) = (seen.Min(s => s.Placed.XMetres) - 0.1, seen.Max(s => s.Placed.XMetres) + 0.1);
        dxf.Line("CENTRE", (rear * 1000, 0, null), (front * 1000, 0, null));
        dxf.Text("NAMES", (front * 1000, 0), TextHeight, Texts.Say("drawing.frame-dxf.front-all-in-millimetres"));
    }

    private static void PointAndName(DxfText dxf, Seen seen)
    {
        var placed = seen.Placed;
        var (x, y) = (placed.XMetres * 1000, placed.YMetres * 1000);
        var mark = seen.IsMeasured ? "FLOOR_MARKS" : "SKETCH_ONLY";
        // On the floor, whatever the height of the point above it.
        dxf.Point(mark, (x, y, 0));
        dxf.Circle(mark, (x, y), MarkRadius);
        dxf.Text("NAMES", (x + (1.5 * MarkRadius), y + (1.5 * MarkRadius)), TextHeight, placed.Id);
        if (seen.IsMeasured && placed.Estimate?.ZMetres is { } z)
        {
            dxf.Point("FRAME", (x, y, z * 1000));
        }
    }

    private static void FrameLine(DxfText dxf, PlacedPoint from, PlacedPoint to)
    {
        var areMeasured = from.Source == PlaceSource.Measured && to.Source == PlaceSource.Measured;
        var haveHeights = from.Estimate?.ZMetres is not null && to.Estimate?.ZMetres is not null;
        var layer =
            !areMeasured ? "SKETCH_ONLY"
            : haveHeights ? "FRAME"
            : "FRAME_NO_HEIGHT";
        dxf.Line(layer, At(from), At(to));

        (double X, double Y, double? Z) At(PlacedPoint p) =>
            (p.XMetres * 1000, p.YMetres * 1000, layer == "FRAME" ? p.Estimate!.ZMetres * 1000 : null);
    }

    private static void Readings(DxfText dxf, CarFile car, FloorScene scene)
    {
        foreach (var plan in car.StandingReadings.OfType<Reading.Plan>())
        {
            if (scene.Find(plan.From) is { IsMeasured: true } from && scene.Find(plan.To) is { IsMeasured: true } to)
            {
                dxf.Line("READINGS", Mark(from.Placed), Mark(to.Placed));
            }
        }

        static (double X, double Y, double? Z) Mark(PlacedPoint p) => (p.XMetres * 1000, p.YMetres * 1000, 0);
    }
}
