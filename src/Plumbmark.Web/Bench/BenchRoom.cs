using Microsoft.AspNetCore.Http;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>The bench: loose parts, which type each is, whether it is straight, whether it is worth keeping.</summary>
public static class BenchRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Bench", car => car is null ? null : $"/cars/{car}/bench", Map);

    private static void Map(RoomRoutes routes)
    {
        routes.CarPage("bench", request => Show.Page<BenchPage>(BenchView.Of(request)));
        routes.CarChange("bench/parts", PartChanges.Lay);
        routes.CarPage("bench/parts/{part}", ShowPart);
        routes.CarPage("bench/parts/{part}/card", ShowCard);
        routes.CarChange("bench/parts/{part}/card", PartChanges.WriteCard);
        routes.CarChange("bench/parts/{part}/removal", PartChanges.PutAway);
        routes.CarChange("bench/parts/{part}/measures", MeasureChanges.Take);
        routes.CarPage("bench/parts/{part}/measures/{measure}/withdrawal", ShowWithdrawal);
        routes.CarChange("bench/parts/{part}/measures/{measure}/withdrawal", MeasureChanges.TakeBack);
        routes.CarChange("bench/parts/{part}/photos", PhotoChanges.Add);
        routes.CarChange("bench/parts/{part}/photos/{photo}/removal", PhotoChanges.Remove);
        routes.CarPage("bench/photos/{photo}", PhotoChanges.Send);
        routes.CarPage("bench/types", request => Show.Page<TypesPage>(TypesView.Of(request)));
        routes.CarChange("bench/types", TypeChanges.Describe);
        routes.CarChange("bench/types/{type}/removal", TypeChanges.Remove);
    }

    internal static string NoSuchPart => Say("bench.there-is-no-such");

    private static IResult ShowPart(CarRequest request) =>
        PartView.Of(request) is { } view ? Show.Page<PartPage>(view) : Show.NotFound(NoSuchPart);

    private static IResult ShowCard(CarRequest request) =>
        CardView.Of(request) is { } view ? Show.Page<CardPage>(view) : Show.NotFound(NoSuchPart);

    private static IResult ShowWithdrawal(CarRequest request) =>
        MeasureWithdrawalView.Of(request, new FieldFaults()) is { } view
            ? Show.Page<MeasureWithdrawalPage>(view)
            : Show.NotFound(Say("bench.there-is-no-such-measure"));
}
