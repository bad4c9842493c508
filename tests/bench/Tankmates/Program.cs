using CareSheets.Bench.Tankmates;

// dotnet run -c Release --project tests/bench/Tankmates [folder of the repository]
var root = args.Length > 0 ? args[0] : ".";
var isWithin = TankmatesSpeed.Run(root, 1000, mostSeconds: 3, mostMegabytes: 300, mostDataMegabytes: 1.5);
isWithin &= TankmatesSpeed.Run(root, 3000, mostSeconds: 27, mostMegabytes: 2700, mostDataMegabytes: 13.5);
isWithin &= await PageSpeed.Run(root, 1000, mostMilliseconds: 50);
isWithin &= await PageSpeed.Run(root, 3000, mostMilliseconds: 50);
return isWithin ? 0 : 1;
