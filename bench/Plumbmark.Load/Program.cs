using Plumbmark.Load;

// dotnet run -c Release --project bench/Plumbmark.Load -- phones PLUMBMARK.DLL > bench/results/load.txt
// dotnet run -c Release --project bench/Plumbmark.Load -- evening PLUMBMARK.DLL [READINGS] > bench/results/evening.txt
switch (args)
{
    case ["phones", var binary]:
        return await ManyPhones.Run(binary, Console.Out);
    case ["evening", var binary, .. var rest]:
        return await LongEvening.Run(binary, rest is [var readings] ? int.Parse(readings) : 4320, Console.Out);
    default:
        Console.Error.WriteLine("What? phones PLUMBMARK.DLL, or evening PLUMBMARK.DLL [READINGS]");
        return 64;
}
