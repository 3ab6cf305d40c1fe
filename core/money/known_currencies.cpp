// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/money/known_currencies.h"

namespace rw {

namespace {
// ISO 4217, list one, without metals, funds and test codes.
constexpr std::string_view kCodes =
    "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF "
    "CHF CLP CNY COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD "
    "HNL HTG HUF IDR ILS INR IQD IRR ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD "
    "MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN "
    "PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY "
    "TTD TWD TZS UAH UGX USD UYI UYU UZS VED VES VND VUV WST XAF XCD XCG XOF XPF YER ZAR ZMW ZWG";
constexpr std::size_t kCodeLength = 3;
} // namespace

bool isKnownCurrency(std::string_view code) {
    return code.size() == kCodeLength && code.find(' ') == std::string_view::npos &&
           kCodes.find(code) != std::string_view::npos;
}

std::vector<std::string_view> knownCurrencies() {
    std::vector<std::string_view> codes;
    for (std::size_t at = 0; at < kCodes.size(); at += kCodeLength + 1) {
        codes.push_back(kCodes.substr(at, kCodeLength));
    }
    return codes;
}

} // namespace rw
