using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Server;

/// <summary>A short remark at the top of the page after a change. Only these may be named in an address, so that no link can put words in our mouth.</summary>
public static class Notice
{
    /// <summary>The same form came twice.</summary>
    public const string KeptBefore = "kept-before";

    /// <summary>Something was undone.</summary>
    public const string Undone = "undone";

    /// <summary>What was undone was put back.</summary>
    public const string PutBack = "put-back";

    /// <summary>A car went to the bin.</summary>
    public const string Binned = "binned";

    /// <summary>A car came out of the bin.</summary>
    public const string Restored = "restored";

    /// <summary>A backup was brought back.</summary>
    public const string BackupRestored = "backup-restored";

    /// <summary>The words for a remark; null for one that is not known.</summary>
    public static string? Words(string? name) =>
        name switch
        {
            KeptBefore => Say("page.notice.this-was-sent-before"),
            Undone => Say("page.notice.undone-it-stays-in"),
            PutBack => Say("page.notice.put-back"),
            Binned => Say("page.notice.the-car-is-in"),
            Restored => Say("page.notice.the-car-is-back"),
            BackupRestored => Say("page.notice.the-backup-is-in"),
            _ => null,
        };
}
