using System.CommandLine;
using Plumbmark;
using Plumbmark.Inspection.Language;
using Plumbmark.Verbs;

// Before the first sentence: the helps of the verbs are sentences too.
Texts.Speak(Environment.GetEnvironmentVariable("PLUMBMARK_LANGUAGE"));

var output = new Output(Console.OpenStandardOutput(), Console.Error);
var root = new RootCommand(Texts.Say("verb.program.is-this-frame-true-is"))
{
    CheckVerb.Command(output),
    PlanVerb.Command(output),
    AdjustVerb.Command(output),
    BenchVerb.Command(output),
    PressVerb.Command(output),
    RoadVerb.Command(output),
    ServeVerb.Command(output),
    DemoVerb.Command(output),
    ImportVerb.Command(output),
    ExportVerb.Command(output),
    BookVerb.Command(output),
    SchemaVerb.Command(output),
    SheetVerb.Command(output),
    BackupVerb.Command(output),
    RestoreVerb.Command(output),
    ClubVerb.Command(output),
    ExtractVerb.Command(output),
    AddReadingsVerb.Command(output),
};
ServeVerb.AddTo(root, output);
var parsed = root.Parse(args);
if (parsed.Errors.Count > 0)
{
    foreach (var error in parsed.Errors)
    {
        output.Remark(error.Message);
    }

    output.Remark(Texts.Say("verb.program.try-plumbmark-help"));
    return ExitCode.Usage;
}

try
{
    return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (Exception refused) when (refused is InputRefusedException or Plumbmark.Store.StoreUnusableException)
{
    output.Remark(refused.Message);
    return ExitCode.Refused;
}
catch (Exception e) when (e is not OutOfMemoryException)
{
    output.Remark(Texts.Say("verb.program.something-in-the-program-itself", e));
    return ExitCode.Internal;
}
