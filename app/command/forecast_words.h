#pragma once

#include "core/season/need.h"

#include <string>

namespace warmbench::app {

/// What every batch and target of a book is likely to come to, for a person.
std::string forecastWords(const HouseBook& book, const forecast::BookForecast& forecast,
                          const std::vector<season::TargetNeed>& needs);
/// The same as JSON.
std::string forecastJson(const HouseBook& book, const forecast::BookForecast& forecast,
                         const std::vector<season::TargetNeed>& needs);
/// One batch's rooted share by day with its band, and its checks.
std::string batchWords(const HouseBook& book, const forecast::BookForecast& forecast, const Batch& batch);

} // namespace warmbench::app
