#include "app/storage/shared_address.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>

namespace warmbench::app {
namespace {

/// Settings that are handed on to PostgreSQL's library; `host` besides names the folder of a socket.
constexpr std::array<std::string_view, 13> handedOn{"sslmode",
                                                    "sslrootcert",
                                                    "sslcert",
                                                    "sslkey",
                                                    "sslcrl",
                                                    "sslsni",
                                                    "ssl_min_protocol_version",
                                                    "ssl_max_protocol_version",
                                                    "channel_binding",
                                                    "gssencmode",
                                                    "connect_timeout",
                                                    "application_name",
                                                    "krbsrvname"};

int hexDigit(char digit) {
    if (digit >= '0' && digit <= '9') return digit - '0';
    const char lower = static_cast<char>(std::tolower(static_cast<unsigned char>(digit)));
    return lower >= 'a' && lower <= 'f' ? lower - 'a' + 10 : -1;
}

/// `%41` is A; nothing where a sign is cut short or would be a control character.
std::optional<std::string> decoded(std::string_view text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        char letter = text[i];
        if (letter == '%') {
            if (i + 2 >= text.size()) return std::nullopt;
            const int high = hexDigit(text[i + 1]);
            const int low = hexDigit(text[i + 2]);
            if (high < 0 || low < 0) return std::nullopt;
            letter = static_cast<char>(high * 16 + low);
            i += 2;
        }
        if (static_cast<unsigned char>(letter) < 0x20 || letter == 0x7f) return std::nullopt;
        plain += letter;
    }
    return plain;
}

std::string encoded(std::string_view text, std::string_view plain) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string written;
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        if (std::isalnum(byte) || plain.find(letter) != std::string_view::npos) {
            written += letter;
            continue;
        }
        written += '%';
        written += digits[byte >> 4];
        written += digits[byte & 15];
    }
    return written;
}

/// Cuts `text` at the first `mark`: what is before it is returned, what is after it is left; all of it where
/// there is no mark.
std::string_view cut(std::string_view& text, char mark) {
    const std::size_t place = text.find(mark);
    const std::string_view before = text.substr(0, place);
    text = place == std::string_view::npos ? std::string_view{} : text.substr(place + 1);
    return before;
}

Refusal noAddress(const Phrase& what) {
    return {"BOOK", phrase("this is no address of a shared book: %1; expected "
                           "postgresql://user@host:port/database?sslmode=verify-full",
                           what)};
}

/// `host:port` or `[host]:port`.
Outcome readHost(std::string_view text, SharedAddress& address) {
    std::string_view host;
    if (text.starts_with('[')) {
        text.remove_prefix(1);
        if (text.find(']') == std::string_view::npos)
            return noAddress(phrase("its host has no closing bracket"));
        host = cut(text, ']');
        if (!text.empty() && text.front() != ':') return noAddress(phrase("something follows its host"));
        if (!text.empty()) text.remove_prefix(1);
    } else {
        host = cut(text, ':');
    }
    const auto plain = decoded(host);
    // A semicolon separates settings further on.
    if (!plain || plain->find(';') != std::string::npos)
        return noAddress(phrase("its host is not written right"));
    address.host = *plain;
    if (text.empty()) return std::nullopt;
    if (text.size() > 5 ||
        !std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; }))
        return noAddress(phrase("its port is no number"));
    for (const char digit : text) address.port = address.port * 10 + (digit - '0');
    if (address.port < 1 || address.port > 65535)
        return noAddress(phrase("its port is not between 1 and 65535"));
    return std::nullopt;
}

Outcome readSettings(std::string_view text, SharedAddress& address) {
    while (!text.empty()) {
        std::string_view one = cut(text, '&');
        const auto name = decoded(cut(one, '='));
        const auto value = decoded(one);
        if (!name || !value) return noAddress(phrase("what follows its question mark is not written right"));
        // A semicolon separates settings further on.
        if (value->find(';') != std::string::npos) return noAddress(phrase("a setting holds a semicolon"));
        if (*name == "host")
            address.host = *value;
        else if (std::find(handedOn.begin(), handedOn.end(), *name) != handedOn.end())
            address.settings[*name] = *value;
        else
            return noAddress(phrase("it has a setting that is not known, '%1'", name->substr(0, 40)));
    }
    return std::nullopt;
}

} // namespace

Result<SharedAddress> SharedAddress::read(std::string_view text) {
    const std::size_t scheme = text.find("://");
    if (scheme == std::string_view::npos ||
        (text.substr(0, scheme) != "postgresql" && text.substr(0, scheme) != "postgres"))
        return noAddress(phrase("it does not begin with postgresql://"));
    text.remove_prefix(scheme + 3);
    SharedAddress address;
    std::string_view settings = text;
    std::string_view path = cut(settings, '?');
    std::string_view server = cut(path, '/');
    // The last @ ends who it is, as a password may hold one.
    if (const std::size_t at = server.rfind('@'); at != std::string_view::npos) {
        std::string_view secret = server.substr(0, at);
        const auto user = decoded(cut(secret, ':'));
        const auto password = decoded(secret);
        if (!user || !password) return noAddress(phrase("its user or password is not written right"));
        address.user = *user;
        address.password = *password;
        server.remove_prefix(at + 1);
    }
    if (auto refusal = readHost(server, address)) return *refusal;
    const auto database = decoded(path);
    if (!database || database->empty()) return noAddress(phrase("it names no database"));
    address.database = *database;
    if (auto refusal = readSettings(settings, address)) return *refusal;
    return address;
}

std::string SharedAddress::shown() const {
    SharedAddress open = *this;
    open.password.clear();
    return open.withPassword();
}

std::string SharedAddress::withPassword() const {
    const bool folder = host.starts_with('/');
    std::string text = "postgresql://";
    if (!user.empty() || !password.empty()) {
        text += encoded(user, "-._~");
        if (!password.empty()) text += ':' + encoded(password, "-._~");
        text += '@';
    }
    if (!folder) {
        const bool six = host.find(':') != std::string::npos;
        text += six ? '[' + encoded(host, "-._~:") + ']' : encoded(host, "-._~");
    }
    if (port > 0) text += ':' + std::to_string(port);
    text += '/' + encoded(database, "-._~");
    char mark = '?';
    const auto add = [&](const std::string& name, const std::string& value) {
        text += mark + name + '=' + encoded(value, "-._~/");
        mark = '&';
    };
    if (folder) add("host", host);
    for (const auto& [name, value] : settings) add(name, value);
    return text;
}

} // namespace warmbench::app
