#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/forecast_words.h"
#include "app/command/number_option.h"
#include "app/command/open_book.h"
#include "app/resource/built_in_recipes.h"
#include "core/book/query.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct ForecastOptions {
    std::string book;
    std::string day;
    std::string batch;
    double sure = 0; ///< 0: as the nursery's settings say
    bool json = false;
};

/// Days from which a target that is short may still be struck again.
constexpr int daysToStrikeAgain = 28;

int forecastBook(const ForecastOptions& options) {
    const auto store = openBook(options.book, OpenMode::Read);
    if (!store) return refuseFile(store.refusal());
    const HouseBook& book = (*store)->book();
    const auto day = readDay("--day", options.day);
    if (!day) return refuse(day.refusal());
    season::PlanRequest request;
    request.from = *day;
    request.days = daysToStrikeAgain;
    request.surenessPermille = options.sure > 0 ? permilleOf(options.sure) : book.nursery().surenessPermille;
    const forecast::BookForecast forecast = season::forecastFor(book, request);
    if (!options.batch.empty()) {
        const Batch* batch = findBatch(book, options.batch);
        if (!batch || !forecast.find(batch->id))
            return refuse({"--batch", "found '" + options.batch +
                                          "', expected the code of a struck batch that stands on " +
                                          day->iso()});
        std::cout << batchWords(book, forecast, *batch);
        return done;
    }
    const auto needs = season::targetNeeds(book, builtInRecipes(), request, forecast);
    std::cout << (options.json ? forecastJson(book, forecast, needs) : forecastWords(book, forecast, needs));
    return done;
}

} // namespace

void addForecast(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("forecast", "Foresee when batches are ready and how many plants they give");
    const auto options = std::make_shared<ForecastOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("--day", options->day, "As seen on this day, such as 2027-02-01; today without it");
    call->add_option("--batch", options->batch, "One batch by its code: its rooted share by day");
    addNumber(*call, "--sure", options->sure, between(0.5, 0.999), "Sureness of dates and numbers");
    call->add_flag("--json", options->json, "Print the forecast as JSON");
    call->callback([&work, options] { work = [options] { return forecastBook(*options); }; });
}

} // namespace warmbench::app
