using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>The sheet: what is printed or shared.</summary>
public static class SheetRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Sheet", car => car is null ? null : $"/cars/{car}/sheet", Map);

    private static void Map(RoomRoutes routes)
    {
        routes.CarPage("sheet", request => Show.Page<SheetPage>(SheetView.Of(request)));
        routes.CarPage("sheet/{kind}.pdf", SheetFiles.Send);
        routes.CarPage("extracts/{what}", ExtractFiles.Send);
        routes.CarPage("club-file", ClubFiles.Send);
        routes.CarPage("sheet/readings-in", request => Show.Page<ReadingsInPage>(ReadingsInView.Of(request)));
        routes.CarChange("reading-files", ReadingFiles.BringIn);
        routes.CarPage(
            "sheet/form-in",
            request => FormInView.Of(request) is { } form ? Show.Page<FormInPage>(form) : Show.NotFound(Say("sheet.there-is-no-form"))
        );
        routes.CarChange("form-readings", FormReadings.Take);
    }
}
