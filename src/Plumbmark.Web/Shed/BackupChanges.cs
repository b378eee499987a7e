using Microsoft.AspNetCore.Http;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Shed;

/// <summary>The whole shed on one file, and back. Nothing that is here is replaced or removed.</summary>
internal static class BackupChanges
{
    public static IResult TakeOut(PageRequest request) =>
        Show.File(
            request.Journals.Backup(),
            "application/octet-stream",
            $"plumbmark-{TimeProvider.System.GetLocalNow():yyyy-MM-dd}.backup"
        );

    public static IResult BringBack(PageRequest request)
    {
        if (request.File("backup") is not { } file)
        {
            var faults = new FieldFaults();
            faults.Add("backup", Say("shed.backup.no-file-was-chosen"));
            return Show.Again<ShedPage>(ShedView.Of(request, faults));
        }

        try
        {
            request.Journals.Restore(PageRequest.Bytes(file));
            return Show.Redirect("/", Notice.BackupRestored);
        }
        catch (StoreUnusableException e)
        {
            var faults = new FieldFaults();
            faults.Add("backup", e.Message);
            return Show.Again<ShedPage>(ShedView.Of(request, faults));
        }
    }
}
