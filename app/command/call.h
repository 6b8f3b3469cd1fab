#pragma once

#include "core/quantity/result.h"

#include <CLI/CLI.hpp>

#include <functional>

namespace warmbench::app {

/// Exit statuses of the program.
enum ExitStatus : int { done = 0, answerIsNo = 1, badInput = 2, storageFailed = 3 };

/// What a call does once its line has been read; returns the exit status.
using Work = std::function<int()>;

/// Writes a refusal as one line to standard error, after the program's name; `status` is returned.
int refuse(const Refusal& refusal, ExitStatus status = badInput);
/// The same for a file that the refusal names: the line begins with the file's name.
int refuseFile(const Refusal& refusal, ExitStatus status = badInput);

// Each adds one call with its options to the program; when that call is chosen, `work` becomes its work.
// A new call is one file here, one line below and one in program.cpp.
void addBackup(CLI::App& program, Work& work);
void addBackups(CLI::App& program, Work& work);
void addCheck(CLI::App& program, Work& work);
void addClimate(CLI::App& program, Work& work);
void addCopy(CLI::App& program, Work& work);
void addExport(CLI::App& program, Work& work);
void addFit(CLI::App& program, Work& work);
void addForecast(CLI::App& program, Work& work);
void addImport(CLI::App& program, Work& work);
void addMap(CLI::App& program, Work& work);
void addNew(CLI::App& program, Work& work);
void addOpen(CLI::App& program, Work& work);
void addOwnRecipe(CLI::App& program, Work& work);
void addPlan(CLI::App& program, Work& work);
void addPrint(CLI::App& program, Work& work);
void addReckon(CLI::App& program, Work& work);
void addRecipes(CLI::App& program, Work& work);
void addRescue(CLI::App& program, Work& work);
void addRound(CLI::App& program, Work& work);
void addSolve(CLI::App& program, Work& work);
void addTake(CLI::App& program, Work& work);
void addVerify(CLI::App& program, Work& work);

} // namespace warmbench::app
