using Plumbmark.Reliability;

return Campaign.Run(args);
