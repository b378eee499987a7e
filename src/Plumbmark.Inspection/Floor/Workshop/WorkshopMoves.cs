using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>Turns an answer into moves for a frame shop: only points of checks that are out, in the order of the frame.</summary>
/// <remarks>
/// Where a point belongs: by the book if the book has it; else, when the answer names this point alone as bent, the mirror image of its partner;
/// else half way between the two sides. A direction in which the point is not surely off (two standard uncertainties) is left out.
/// </remarks>
public static class WorkshopMoves
{
    // Checks on more points than a pair (twist, sag) are about the frame as a whole and are told by their damage sentence.
    private const int MostPointsOfAPointCheck = 2;

    // 95 times in 100 (JCGM 100:2008, G.1.3).
    private const double Coverage = 2;

    /// <summary>The moves; none when nothing is out.</summary>
    public static IReadOnlyList<WorkshopMove> Of(CarFile car, FloorAnswer answer)
    {
        var estimates = answer.Points.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var failing = Failing(answer);
        var bentAlone = BentAlone(answer);
        var moves = new List<WorkshopMove>();
        foreach (var point in car.Frame.Points.Where(p => failing.Contains(p.Id)))
        {
            if (!estimates.TryGetValue(point.Id, out var estimate) || (point.Mirror is { } partner && bentAlone == partner))
            {
                continue; // nothing measured, or its partner alone is bent and this one stays
            }

            var (wish, against, isOneOfAPair) = WishFor(point, estimate, estimates, answer, isBentAlone: bentAlone == point.Id);
            var parts = Parts(wish);
            if (parts.Count > 0)
            {
                var staying = estimates.Values.Where(e => !failing.Contains(e.Id) || e.Id == KeptPartner(point));
                var guides = WorkshopGuides.For(car, answer, estimate, wish.Only(parts), staying);
                moves.Add(new WorkshopMove(point.Id, parts, against, isOneOfAPair, guides));
            }

            string? KeptPartner(FramePoint of) => bentAlone == of.Id ? of.Mirror : null;
        }

        return moves;
    }

    private static HashSet<string> Failing(FloorAnswer answer) =>
        answer
            .Checks.Where(c => c.Verdict == Verdict.Out && c.Points.Count <= MostPointsOfAPointCheck)
            .SelectMany(c => c.Points)
            .ToHashSet(StringComparer.Ordinal);

    private static string? BentAlone(FloorAnswer answer) => answer.Damage is [{ Form: "point", From: { } from }, ..] ? from : null;

    private static (Wish Wish, DeviationFrom Against, bool IsOneOfAPair) WishFor(
        FramePoint point,
        PointEstimate estimate,
        Dictionary<string, PointEstimate> estimates,
        FloorAnswer answer,
        bool isBentAlone
    )
    {
        var deviation = estimate.Deviation;
        if (deviation is { Against: DeviationFrom.Nominal })
        {
            var byBook = new Wish(
                (-deviation.DxMetres, estimate.UxMetres),
                (-deviation.DyMetres, estimate.UyMetres),
                (-deviation.DzMetres, estimate.UzMetres)
            );
            return (byBook, DeviationFrom.Nominal, false);
        }

        var pair = answer.Pairs.FirstOrDefault(p => p.Left == point.Id || p.Right == point.Id);
        if (isBentAlone && point.Mirror is { } mirror && estimates.TryGetValue(mirror, out var partner))
        {
            var asMirror = new Wish(
                (partner.XMetres - estimate.XMetres, pair?.UStaggerMetres),
                (-partner.YMetres - estimate.YMetres, 2 * pair?.USideShiftMetres),
                (partner.ZMetres - estimate.ZMetres, pair?.UHeightDifferenceMetres)
            );
            return (asMirror, DeviationFrom.Symmetry, false);
        }

        var halfWay = new Wish(
            (-deviation?.DxMetres, pair?.UStaggerMetres / 2),
            (-deviation?.DyMetres, pair?.USideShiftMetres),
            (-deviation?.DzMetres, pair?.UHeightDifferenceMetres / 2)
        );
        return (halfWay, DeviationFrom.Symmetry, true);
    }

    private static List<MovePart> Parts(Wish wish)
    {
        var all = new List<MovePart>();
        Add(wish.X, MoveDirection.Forward, MoveDirection.Rearward);
        Add(wish.Y, MoveDirection.Left, MoveDirection.Right);
        Add(wish.Z, MoveDirection.Up, MoveDirection.Down);
        var sure = all.Where(p => p.AmountMetres > Coverage * p.UMetres).OrderByDescending(p => p.AmountMetres).ToList();
        return sure.Count > 0 ? sure : [.. all.OrderByDescending(p => p.AmountMetres).Take(1)];

        void Add((double? Amount, double? U) part, MoveDirection whenPositive, MoveDirection whenNegative)
        {
            if (part is { Amount: { } amount and not 0, U: { } u })
            {
                all.Add(new MovePart(amount > 0 ? whenPositive : whenNegative, Math.Abs(amount), u));
            }
        }
    }
}
