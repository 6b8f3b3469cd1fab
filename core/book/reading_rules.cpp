#include "core/book/query.h"
#include "core/book/rules.h"
#include "core/climate/packed_readings.h"

#include <algorithm>

/// Rules of the readings of loggers.
namespace warmbench {
namespace {

/// The least and the most that a channel can have measured, in hundredths.
std::pair<int, int> measurable(Channel channel) {
    return channel == Channel::Humidity ? std::pair(0, 10'000) : std::pair(-6'000, 10'000);
}

} // namespace

Outcome checkThing(const HouseBook& book, const ReadingMonth& month) {
    if (month.zone.has_value() == month.house.has_value())
        return Refusal{kindName<ReadingMonth>.one, phrase("it must be of a zone or of a house")};
    const std::string place =
        (month.zone ? zoneTitle(book, *month.zone) : book.get<House>(*month.house).name) + ", " +
        channelNames[static_cast<std::size_t>(month.channel)] + " of " + month.month.iso().substr(0, 7);
    if (month.month.dayOfMonth() != 1)
        return Refusal{place, phrase("a month of readings must begin on its first day")};
    if (month.month < Day::fromNumber(0) || month.month.year() > 5000)
        return Refusal{place, phrase("readings of the years 1970 to 5000 can be kept, no others")};
    const auto& months = book.readingsOf(month.place(), month.channel);
    if (const auto found = months.find(month.month); found == months.end() || found->second != month.id)
        return Refusal{place, phrase("its readings stand twice")};
    std::vector<climate::MinuteReading> readings;
    if (!climate::unpack(month.packed, month.month, readings))
        return Refusal{place, phrase("its readings can't be read")};
    const auto [least, most] = measurable(month.channel);
    for (const climate::MinuteReading& reading : readings)
        if (reading.value < least || reading.value > most)
            return Refusal{place, month.channel == Channel::Humidity
                                      ? phrase("a humidity that is not from 0 to 100 %")
                                      : phrase("a temperature that is not from -60 to 100 °C")};
    return std::nullopt;
}

} // namespace warmbench
