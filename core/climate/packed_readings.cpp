#include "core/climate/packed_readings.h"

#include <array>
#include <limits>

namespace warmbench::climate {
namespace {

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
constexpr unsigned more = 32;
constexpr std::uint8_t noDigit = 255;

constexpr std::array<std::uint8_t, 256> digits = [] {
    std::array<std::uint8_t, 256> all{};
    all.fill(noDigit);
    for (std::size_t i = 0; i < alphabet.size(); ++i)
        all[static_cast<unsigned char>(alphabet[i])] = static_cast<std::uint8_t>(i);
    return all;
}();

void writeNumber(std::string& text, std::uint32_t number) {
    for (; number >= more; number /= more) text += alphabet[number % more + more];
    text += alphabet[number];
}

std::uint32_t folded(std::int32_t difference) {
    return difference < 0 ? 2 * static_cast<std::uint32_t>(-(difference + 1)) + 1
                          : 2 * static_cast<std::uint32_t>(difference);
}

std::int32_t unfolded(std::uint32_t number) {
    const auto half = static_cast<std::int32_t>(number / 2);
    return number % 2 == 1 ? -half - 1 : half;
}

/// Reads numbers one after the other.
class NumberReader {
public:
    explicit NumberReader(std::string_view text) : m_next(text.data()), m_end(text.data() + text.size()) {}

    [[nodiscard]] bool atEnd() const { return m_next == m_end; }
    [[nodiscard]] bool failed() const { return m_failed; }
    std::uint32_t next() {
        constexpr unsigned bits = 5;
        constexpr unsigned mostBits = 30;
        std::uint32_t number = 0;
        for (unsigned shift = 0; shift < mostBits && m_next != m_end; shift += bits) {
            const std::uint8_t digit = digits[static_cast<unsigned char>(*m_next++)];
            if (digit == noDigit) break;
            number |= (digit % more) << shift;
            if (digit < more) return number;
        }
        m_failed = true;
        return 0;
    }

private:
    const char* m_next;
    const char* m_end;
    bool m_failed = false;
};

std::int32_t firstMinute(Day day) {
    return day.number() * minutesPerDay;
}

/// How many of the readings from the first on have the same step between them.
std::size_t evenRun(std::span<const MinuteReading> readings) {
    if (readings.size() < 3) return 1;
    const std::int32_t step = readings[1].minute - readings[0].minute;
    std::size_t run = 2;
    while (run < readings.size() && readings[run].minute - readings[run - 1].minute == step) ++run;
    return run > 2 ? run : 1;
}

} // namespace

Day monthOf(std::int32_t minute) {
    const std::int32_t day = minute >= 0 ? minute / minutesPerDay : (minute + 1) / minutesPerDay - 1;
    const Day found = Day::fromNumber(day);
    return found - (static_cast<int>(found.dayOfMonth()) - 1);
}

Day nextMonth(Day month) {
    constexpr int surelyInTheNext = 31;
    const Day later = month + surelyInTheNext;
    return later - (static_cast<int>(later.dayOfMonth()) - 1);
}

std::string pack(std::span<const MinuteReading> readings, Day month) {
    std::string text;
    text.reserve(readings.size() * 2);
    std::int32_t minute = firstMinute(month);
    std::int32_t value = 0;
    while (!readings.empty()) {
        const std::size_t run = evenRun(readings);
        writeNumber(text, static_cast<std::uint32_t>(readings[0].minute - minute));
        writeNumber(text, run > 1 ? static_cast<std::uint32_t>(readings[1].minute - readings[0].minute) : 0);
        writeNumber(text, static_cast<std::uint32_t>(run));
        for (const MinuteReading& reading : readings.first(run)) {
            writeNumber(text, folded(reading.value - value));
            value = reading.value;
        }
        minute = readings[run - 1].minute;
        readings = readings.subspan(run);
    }
    return text;
}

bool unpack(std::string_view text, Day month, std::vector<MinuteReading>& into) {
    const std::size_t before = into.size();
    const auto fail = [&] {
        into.resize(before);
        return false;
    };
    const std::int64_t end = firstMinute(nextMonth(month));
    NumberReader numbers(text);
    std::int64_t minute = firstMinute(month);
    std::int64_t value = 0;
    while (!numbers.atEnd()) {
        const std::uint32_t gap = numbers.next();
        const std::uint32_t step = numbers.next();
        const std::uint32_t run = numbers.next();
        const bool rises = into.size() == before || gap > 0;
        if (numbers.failed() || run < 1 || !rises || (step == 0) != (run == 1)) return fail();
        minute += gap;
        // Before room is made for them: no text may ask for more readings than a month has minutes.
        if (minute + std::int64_t{step} * (run - 1) >= end) return fail();
        for (std::uint32_t i = 0; i < run; ++i) {
            if (i > 0) minute += step;
            value += unfolded(numbers.next());
            if (numbers.failed() || value < std::numeric_limits<std::int32_t>::min() ||
                value > std::numeric_limits<std::int32_t>::max())
                return fail();
            into.push_back({static_cast<std::int32_t>(minute), static_cast<std::int32_t>(value)});
        }
    }
    return into.size() > before;
}

std::vector<MinuteReading> merged(std::span<const MinuteReading> kept, std::span<const MinuteReading> added) {
    std::vector<MinuteReading> all;
    all.reserve(kept.size() + added.size());
    while (!kept.empty() || !added.empty()) {
        const bool fromKept = added.empty() || (!kept.empty() && kept[0].minute <= added[0].minute);
        auto& from = fromKept ? kept : added;
        if (fromKept && !added.empty() && kept[0].minute == added[0].minute) added = added.subspan(1);
        all.push_back(from[0]);
        from = from.subspan(1);
    }
    return all;
}

} // namespace warmbench::climate
