using System.CommandLine;

var root = new RootCommand("Is this frame true, is this part straight, and what should I measure next?");
return await root.Parse(args).InvokeAsync();
