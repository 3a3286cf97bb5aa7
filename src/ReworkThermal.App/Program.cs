using ReworkThermal.App.Commands;

using ProcessShell process = new();
return Front.Run(args, process.Shell);
