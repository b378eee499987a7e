using Plumbmark.Reliability;

return await Campaign.Run(args);
