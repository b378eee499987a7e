using System.CommandLine;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;

namespace Plumbmark.Verbs;

/// <summary>The journal file that a verb works on.</summary>
internal static class DataOption
{
    public static Option<string> Create() =>
        new("--data") { Description = Texts.Say("verb.data-option.the-journal-file-without-it"), HelpName = "FILE" };

    /// <summary>
    /// Opens the journals in the file named, or in the user's own. A file that is damaged or cannot be written is opened for reading only, and that is said.
    /// </summary>
    /// <exception cref="InputRefusedException">The file cannot be used as it is.</exception>
    public static Journals Open(string? path, Output output)
    {
        try
        {
            var journals = Journals.OpenOrRead(path ?? DataFolder.JournalPath());
            if (journals.ReadOnlyBecause is { } why)
            {
                output.Remark(why);
            }

            return journals;
        }
        catch (StoreUnusableException e)
        {
            throw new InputRefusedException(e.Message);
        }
    }
}
