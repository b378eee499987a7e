using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The drawing of a frame sheet and the sentences with it, in the room that the rest of the page leaves.</summary>
internal static class FrameFront
{
    /// <summary>The least room in which drawing and sentences can be read, points.</summary>
    public const double LeastRoom = 175;

    // A picture unit on paper, in points: the smallest words of a drawing, 12.5 units, are then 6.75 pt.
    private const double Unit = 0.54;

    // Beyond this the drawing needs the page's width.
    private const int MostPointsBeside = 40;
    private const double WidestPlan = 400;
    private const double LeastPlan = 260;
    private const double LeastSide = 60;

    public static IReadOnlyList<Block> Blocks(CarFile car, FloorAnswer answer, double width, double room)
    {
        var signs = new PictureBlock(FloorPlanDrawing.Signs(car, answer, width / Unit), room, Unit);
        return [.. Pictures(car, answer, width, room - signs.Height(width)), signs];
    }

    private static IReadOnlyList<Block> Pictures(CarFile car, FloorAnswer answer, double width, double room)
    {
        if (car.Frame.Points.Count > MostPointsBeside)
        {
            var lists = FrameLists.Fitting(answer, width, Math.Max(0, room - LeastPlan));
            return [.. lists, Plan(car, answer, WidestPlan, Math.Max(LeastPlan, room - lists.Sum(b => b.Height(width))))];
        }

        // The more room, the larger the drawing.
        var share = Math.Clamp(0.37 + ((room - LeastRoom) / 1500), 0.37, 0.5);
        var columns = ColumnsBlock.Widths(width, share);
        var right = FrameLists.Fitting(answer, columns.Right, room);
        var left = room - right.Sum(b => b.Height(columns.Right));
        return [new ColumnsBlock([Plan(car, answer, columns.Left, room)], [.. right, .. Heights(car, answer, columns.Right, left)], share)];
    }

    private static PictureBlock Plan(CarFile car, FloorAnswer answer, double width, double room)
    {
        const double UsualRemarks = 65; // picture units, with the line above the frame
        const double Least = 150;
        var most = (room - PictureBlock.Below) / Unit;
        var plan = Drawn(most - UsualRemarks);
        return new PictureBlock(plan.Height > most ? Drawn(most - UsualRemarks - (plan.Height - most)) : plan, room, Unit);

        Picture Drawn(double tallest) =>
            FloorPlanDrawing.Of(
                car,
                answer,
                new FloorDrawingOptions(Width: width / Unit, TallestFrame: Math.Max(Least, tallest), HasLegend: false)
            );
    }

    /// <summary>The frame from the side, where there is room for it; the table of pairs has its numbers in any case.</summary>
    private static IReadOnlyList<Block> Heights(CarFile car, FloorAnswer answer, double width, double room)
    {
        if (!answer.Points.Any(p => p.ZMetres is not null) || room < LeastSide)
        {
            return [];
        }

        const double Around = 75; // picture units above and below the frame
        var heading = TextBlock.CloseHeading(Texts.Say("sheet.frame-front.heights"));
        var side = FloorSideDrawing.Of(
            car,
            answer,
            new FloorDrawingOptions(
                Width: width / Unit,
                TallestFrame: Math.Clamp(((room - heading.Height(width)) / Unit) - Around, 40, 160),
                HasLegend: false
            )
        );
        var picture = new PictureBlock(side, room, Unit);
        return heading.Height(width) + picture.Height(width) <= room ? [heading, picture] : [];
    }
}
