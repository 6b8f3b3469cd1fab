#include "core/exchange/calendar/calendar.h"

#include "core/exchange/calendar/season_events.h"

#include <libical/ical.h>

#include <memory>

namespace warmbench::exchange {
namespace {

using Component = std::unique_ptr<icalcomponent, void (*)(icalcomponent*)>;

icaltimetype dateOf(Day day) {
    std::string digits;
    for (const char c : day.iso())
        if (c != '-') digits += c;
    return icaltime_from_string(digits.c_str());
}

/// The event, owned by the calendar that it is put into.
icalcomponent* eventOf(const SeasonEvent& one, const CalendarStamp& stamp) {
    const std::string kind = eventKindNames[static_cast<std::size_t>(one.kind)];
    const std::string uid = kind + "-" + std::to_string(one.batch.number) + "-" +
                            std::to_string(one.ordinal) + "-" + stamp.origin + "@warmbench";
    icalcomponent* event = icalcomponent_new(ICAL_VEVENT_COMPONENT);
    icalcomponent_add_property(event, icalproperty_new_uid(uid.c_str()));
    icalcomponent_add_property(event, icalproperty_new_dtstamp(icaltime_from_string(stamp.moment.c_str())));
    icalcomponent_add_property(event, icalproperty_new_sequence(static_cast<int>(stamp.revision)));
    icalcomponent_add_property(event, icalproperty_new_dtstart(dateOf(one.day)));
    icalcomponent_add_property(event, icalproperty_new_dtend(dateOf(one.day + 1)));
    icalcomponent_add_property(event, icalproperty_new_summary(one.title.c_str()));
    if (!one.place.empty()) icalcomponent_add_property(event, icalproperty_new_location(one.place.c_str()));
    if (!one.description.empty())
        icalcomponent_add_property(event, icalproperty_new_description(one.description.c_str()));
    icalcomponent_add_property(event, icalproperty_new_categories(kind.c_str()));
    icalcomponent_add_property(event, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
    return event;
}

} // namespace

std::string writeCalendar(const HouseBook& book, Day from, const CalendarStamp& stamp) {
    const Component calendar(icalcomponent_new(ICAL_VCALENDAR_COMPONENT), &icalcomponent_free);
    icalcomponent_add_property(calendar.get(), icalproperty_new_prodid("-//Warmbench//House book//EN"));
    icalcomponent_add_property(calendar.get(), icalproperty_new_version("2.0"));
    for (const SeasonEvent& event : seasonEvents(book, from))
        icalcomponent_add_component(calendar.get(), eventOf(event, stamp));
    const std::unique_ptr<char, void (*)(void*)> text(icalcomponent_as_ical_string_r(calendar.get()),
                                                      &icalmemory_free_buffer);
    return text.get();
}

} // namespace warmbench::exchange
