#include "core/exchange/csv/moment.h"

#include "core/quantity/day.h"

namespace warmbench::exchange {
namespace {

constexpr std::int64_t microsecondsPerSecond = 1'000'000;
constexpr std::int64_t microsecondsPerMinute = 60 * microsecondsPerSecond;
constexpr std::int64_t microsecondsPerDay = 24 * 60 * microsecondsPerMinute;

/// Takes pieces off the front of a text; a piece that is not there takes nothing.
struct Front {
    std::string_view text;

    bool take(std::string_view anyOf) {
        if (text.empty() || anyOf.find(text.front()) == std::string_view::npos) return false;
        text.remove_prefix(1);
        return true;
    }

    std::optional<int> twoDigits(int most) {
        constexpr std::string_view digits = "0123456789";
        if (text.size() < 2) return std::nullopt;
        const auto tens = digits.find(text[0]);
        const auto ones = digits.find(text[1]);
        if (tens == std::string_view::npos || ones == std::string_view::npos) return std::nullopt;
        const int value = static_cast<int>(10 * tens + ones);
        if (value > most) return std::nullopt;
        text.remove_prefix(2);
        return value;
    }

    /// Microseconds of the digits after a point or comma; further digits are passed over.
    std::optional<std::int64_t> fraction() {
        std::int64_t value = 0;
        std::int64_t place = microsecondsPerSecond;
        const std::size_t before = text.size();
        while (!text.empty() && text.front() >= '0' && text.front() <= '9') {
            place /= 10;
            value += place * (text.front() - '0');
            text.remove_prefix(1);
        }
        if (text.size() == before) return std::nullopt;
        return value;
    }
};

/// Microseconds of `06:30`, `06:30:15` or `06:30:15.25`.
std::optional<std::int64_t> clockTime(Front& front) {
    const auto hour = front.twoDigits(24);
    if (!hour || !front.take(":")) return std::nullopt;
    const auto minute = front.twoDigits(59);
    if (!minute) return std::nullopt;
    std::int64_t time = (*hour * 60 + *minute) * microsecondsPerMinute;
    if (front.take(":")) {
        const auto second = front.twoDigits(59);
        if (!second) return std::nullopt;
        time += *second * microsecondsPerSecond;
        if (front.take(".,")) {
            const auto part = front.fraction();
            if (!part) return std::nullopt;
            time += *part;
        }
    }
    if (time > microsecondsPerDay) return std::nullopt;
    return time;
}

/// Microseconds ahead of UTC: of `Z`, `+01`, `+0100` or `+01:00`.
std::optional<std::int64_t> offsetTime(Front& front) {
    if (front.take("Zz")) return 0;
    const bool behind = !front.text.empty() && front.text.front() == '-';
    if (!front.take("+-")) return std::nullopt;
    const auto hour = front.twoDigits(23);
    if (!hour) return std::nullopt;
    int minutes = *hour * 60;
    if (!front.text.empty()) {
        front.take(":");
        const auto found = front.twoDigits(59);
        if (!found) return std::nullopt;
        minutes += *found;
    }
    return (behind ? -minutes : minutes) * microsecondsPerMinute;
}

} // namespace

std::optional<Moment> momentFromIso(std::string_view text) {
    constexpr std::size_t dateLength = 10;
    const auto day = Day::fromIso(text.substr(0, dateLength));
    if (!day) return std::nullopt;
    Moment moment{day->number() * microsecondsPerDay, false};
    Front front{text.substr(dateLength)};
    if (front.text.empty()) return moment;
    if (!front.take("Tt ")) return std::nullopt;
    const auto clock = clockTime(front);
    if (!clock) return std::nullopt;
    moment.microseconds += *clock;
    if (front.text.empty()) return moment;
    const auto offset = offsetTime(front);
    if (!offset || !front.text.empty()) return std::nullopt;
    moment.microseconds -= *offset;
    moment.offset = true;
    return moment;
}

} // namespace warmbench::exchange
