using System.Reflection;

namespace Plumbmark.Mutation;

/// <summary>The process that switches the changes on, one after the other, and says for each whether a test failed. It is ended from outside when it hangs.</summary>
internal static class Worker
{
    /// <summary>Runs the given changes: a line with the number, then a line with the test that failed or a dash.</summary>
    /// <param name="tests">The test assembly.</param>
    /// <param name="project">The name of the changed assembly.</param>
    /// <param name="spaces">Which tests.</param>
    /// <param name="fresh">Whether the switch is on before anything is loaded, for what is worked out once.</param>
    /// <param name="ids">The numbers of the changes.</param>
    public static void Run(string tests, string project, IReadOnlyList<string> spaces, bool fresh, IEnumerable<int> ids)
    {
        var folder = Path.GetDirectoryName(tests)!;
        AppDomain.CurrentDomain.AssemblyResolve += (_, e) =>
        {
            var file = Path.Combine(folder, $"{new AssemblyName(e.Name).Name}.dll");
            return File.Exists(file) ? Assembly.LoadFrom(file) : null;
        };
        var changed = Assembly.LoadFrom(Path.Combine(folder, $"{project}.dll"));
        var on = changed.GetType("Plumbmark.Changed.Switch", throwOnError: true)!.GetField("On")!;
        var all = new Tests(Assembly.LoadFrom(tests), spaces);
        if (!fresh)
        {
            all.Warm();
            Console.Out.WriteLine($"tests {all.Count}");
            all.LeftOut.ForEach(l => Console.Out.WriteLine($"without {l}"));
        }

        foreach (var id in ids)
        {
            Console.Out.WriteLine($"try {id}");
            on.SetValue(null, id);
            var failure = all.FirstFailure();
            Console.Out.WriteLine($"done {id} {failure ?? "-"}");
        }
    }
}
