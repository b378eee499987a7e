using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Drawing.Road;

/// <summary>The four wheels from above, front up the page: toe, thrust line, set-back, the wheelbase of each side. Angles and steps are drawn larger than they are.</summary>
public static class RoadTopDrawing
{
    private const double Above = 20;
    private const double TallestCar = 300;
    private const double Beside = 46;
    private const double WheelLength = 46;
    private const double WheelWidth = 12;

    // No wheel is drawn turned by more than this.
    private const double LargestTurn = 14 * Math.PI / 180;
    private const double LargestStep = 12;

    /// <summary>The view of an answer.</summary>
    public static Picture Of(RoadAnswer answer, RoadDisplay display, RoadDrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(display);
        options ??= new RoadDrawingOptions();
        var Title = Texts.Say("drawing.road-top.the-wheels-from-above");
        if (answer.Sketches.Count < 2 || answer.RearSketch is not { } rear)
        {
            return RoadLegend.Empty(options, Title, Texts.Say("drawing.road-top.nothing-to-draw-yet-front"));
        }

        (WheelStance Drawn, WheelStance Found)[] wheels =
        [
            (Stance(answer.Sketches[0], true), Stance(answer.Sketches[0], false)),
            (Stance(answer.Sketches[1], true), Stance(answer.Sketches[1], false)),
            (rear.DrawnLeft, rear.FoundLeft),
            (rear.DrawnRight, rear.FoundRight),
        ];
        return new Scene(answer, display, options, wheels).Draw(Title);
    }

    private static WheelStance Stance(CornerSketch corner, bool isDrawn)
    {
        var p = isDrawn ? corner.Drawn : corner.Found;
        var outboard = corner.Side == Side.Left ? p.SpinAxis : p.SpinAxis.Mirrored;
        return new(p.WheelCentre, Math.Asin(-outboard.Z), Math.Atan2(outboard.X, outboard.Y));
    }

    private sealed class Scene
    {
        private readonly RoadAnswer _answer;
        private readonly RoadDisplay _display;
        private readonly RoadDrawingOptions _options;
        private readonly (WheelStance Drawn, WheelStance Found)[] _wheels;
        private readonly double _scale;
        private readonly double _top;
        private readonly int _times;
        private readonly int _turns;

        public Scene(RoadAnswer answer, RoadDisplay display, RoadDrawingOptions options, (WheelStance Drawn, WheelStance Found)[] wheels)
        {
            (_answer, _display, _options, _wheels) = (answer, display, options, wheels);
            var (front, rear) = (wheels.Max(w => w.Drawn.Centre.X), wheels.Min(w => w.Drawn.Centre.X));
            var half = wheels.Max(w => Math.Abs(w.Drawn.Centre.Y));
            _scale = Math.Min((options.Width - (2 * Beside)) / (2 * half), (TallestCar - WheelLength) / (front - rear));
            _top = Above + (WheelLength / 2) + (front * _scale);
            var step = wheels.Max(w => (w.Found.Centre - w.Drawn.Centre).Norm);
            _times = step < 1e-6 ? 1 : Exaggeration.Of(step, _scale, LargestStep);
            var turn = wheels.Max(w => Math.Max(Math.Abs(w.Found.ToeInRadians), Math.Abs(w.Drawn.ToeInRadians)));
            _turns = turn < 1e-6 ? 1 : Exaggeration.Of(turn, 1, LargestTurn);
        }

        public Picture Draw(string title)
        {
            var shapes = new List<Shape> { new Shape.Words(new Spot(_options.Width / 2, 12), "front ↑", Palette.Remark, Anchor.Middle) };
            var (frontY, rearY) = (At(_wheels[0].Drawn.Centre).Y, At(_wheels[2].Drawn.Centre).Y);
            var middle = _options.Width / 2;
            shapes.Add(new Shape.Line(new Spot(middle, frontY - 14), new Spot(middle, rearY + (WheelLength / 2) + 12), Palette.Centre));
            foreach (var (drawn, found) in _wheels)
            {
                shapes.Add(Wheel(drawn.Centre, drawn.ToeInRadians, Palette.Should));
                shapes.Add(Wheel(drawn.Centre + (_times * (found.Centre - drawn.Centre)), found.ToeInRadians, Palette.Frame));
            }

            shapes.AddRange(Thrust(rearY, frontY));
            shapes.AddRange(Wheelbases((frontY + rearY) / 2));
            var remarks = Remarks().ToList();
            var (legend, bottom) = RoadLegend.Draw(
                rearY + (WheelLength / 2) + 18,
                _options,
                remarks,
                (Palette.Frame, Texts.Say("drawing.road-top.as-found")),
                (Palette.Should, Texts.Say("drawing.road-top.as-drawn")),
                (Palette.Centre, Texts.Say("drawing.road-top.centre-line")),
                (Palette.Next, Texts.Say("drawing.road-top.where-the-rear-wheels-drive"))
            );
            return new Picture(_options.Width, bottom, title, $"{_answer.Headline} {string.Join(' ', remarks)}", [.. shapes, .. legend]);
        }

        private Spot At(Vector3 place) => new((_options.Width / 2) - (place.Y * _scale), _top - (place.X * _scale));

        private Shape.Path Wheel(Vector3 centre, double toeIn, Ink ink)
        {
            // A left wheel's heading turns right with toe-in, a right one's left; up the page is forward.
            var heading = (centre.Y > 0 ? 1 : -1) * toeIn * _turns;
            var (sine, cosine) = Math.SinCos(heading);
            var at = At(centre);
            Spot Corner(double along, double across) => at.Moved((across * cosine) + (along * sine), (across * sine) - (along * cosine));
            var (l, w) = (WheelLength / 2, WheelWidth / 2);
            return new([Corner(-l, -w), Corner(l, -w), Corner(l, w), Corner(-l, w)], true, ink);
        }

        private IEnumerable<Shape> Thrust(double rearY, double frontY)
        {
            if (_answer.Figures.FirstOrDefault(f => f.Kind == FigureKind.Thrust) is not { } thrust)
            {
                yield break;
            }

            var turned = Math.Clamp(thrust.Value * _turns, -LargestTurn, LargestTurn);
            var from = new Spot(_options.Width / 2, rearY);
            yield return new Shape.Line(from, from.Moved(-Math.Tan(turned) * (rearY - frontY), frontY - rearY), Palette.Next);
            yield return new Shape.Words(
                from.Moved(6, (WheelLength / 2) + 10),
                Texts.Say("drawing.road-top.thrust", RoadDisplay.Signed(thrust.Value)),
                Palette.NextWord
            );
        }

        private IEnumerable<Shape> Wheelbases(double y)
        {
            foreach (var figure in _answer.Figures.Where(f => f.Kind == FigureKind.Wheelbase))
            {
                var isLeft = figure.Side == Side.Left;
                var words = _display.LengthSize(figure.Value);
                yield return new Shape.Words(
                    new Spot(isLeft ? 2 : _options.Width - 2, y),
                    words,
                    Palette.Note,
                    isLeft ? Anchor.Start : Anchor.End
                );
            }
        }

        private IEnumerable<string> Remarks()
        {
            if (_turns > 1)
            {
                yield return Texts.Say("drawing.road-top.toe-and-thrust-line-drawn", _turns);
            }

            if (_times > 1)
            {
                yield return Texts.Say("drawing.road-top.steps-of-the-wheel-centres", _times);
            }
        }
    }
}
