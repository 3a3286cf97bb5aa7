using ReworkThermal.App.Screens.Desks;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.Running;

/// <summary>What works behind the screens, opened on background threads when first needed.</summary>
/// <param name="OpenBook">Opens the job store.</param>
/// <param name="OpenWorkbench">Reads the data folders and sets up the engines.</param>
/// <param name="Drafts">Keeps what was being typed; null where there is no place for it.</param>
internal sealed record BenchDesks(Func<IJobBook> OpenBook, Func<Workbench> OpenWorkbench, DraftFile? Drafts);
