using Plumbmark.Mutation;

// dotnet build tests/Plumbmark.Inspection.Tests && dotnet build tests/Plumbmark.Engine.Tests
// dotnet run --project bench/Plumbmark.Mutation -- [SUBJECT|all] [CHANGES AT MOST] > bench/results/mutation.txt
if (args is ["worker", var tests, var project, var spaces, var how, var numbers])
{
    Worker.Run(tests, project, spaces.Split(','), how == "fresh", numbers.Split(',').Select(int.Parse));
    return 0;
}

var root = Environment.CurrentDirectory;
var name = args.Length > 0 ? args[0] : "all";
var most = args.Length > 1 ? int.Parse(args[1]) : 300;
var subjects = Subject.All.Where(s => name == "all" || s.Name == name).ToList();
if (subjects.Count == 0 || !File.Exists(Path.Combine(root, "Plumbmark.slnx")))
{
    Console.Error.WriteLine($"From the folder of Plumbmark.slnx: all, {string.Join(", ", Subject.All.Select(s => s.Name))}");
    return 64;
}

var lookedAt = LookedAt.Read(Path.Combine(root, "bench/Plumbmark.Mutation/looked-at.txt"));
foreach (var subject in subjects)
{
    new Examination(root, subject, most).Print(Console.Out, lookedAt);
}

return 0;
