#pragma once
// The words that a case document uses for choices.

#include <fieldshaft/case/case.hpp>

#include <array>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

template <class E> struct Choice {
  E value;
  std::string_view word;
};

template <class E> struct Words;

template <> struct Words<PowerBasis> {
  static constexpr std::array<Choice<PowerBasis>, 3> list{
      {{PowerBasis::pto, "pto"}, {PowerBasis::net_engine, "net engine"}, {PowerBasis::gross_engine, "gross engine"}}};
};
template <> struct Words<StubArrangement> {
  static constexpr std::array<Choice<StubArrangement>, 6> list{
      {{StubArrangement::fixed, "fixed"},
       {StubArrangement::two_stubs_out, "two stubs out"},
       {StubArrangement::exchanged_from_carrier, "exchanged from carrier"},
       {StubArrangement::bolted_with_separate_lever, "bolted with separate lever"},
       {StubArrangement::reversible, "reversible"},
       {StubArrangement::lever_only, "lever only"}}};
};
template <> struct Words<PtoPlace> {
  static constexpr std::array<Choice<PtoPlace>, 3> list{
      {{PtoPlace::rear, "rear"}, {PtoPlace::front, "front"}, {PtoPlace::mid, "mid"}}};
};
template <> struct Words<PtoDrive> {
  static constexpr std::array<Choice<PtoDrive>, 2> list{{{PtoDrive::engine, "engine"}, {PtoDrive::ground, "ground"}}};
};
template <> struct Words<Rotation> {
  static constexpr std::array<Choice<Rotation>, 2> list{
      {{Rotation::clockwise, "clockwise"}, {Rotation::counter_clockwise, "counter-clockwise"}}};
};
template <> struct Words<Traction> {
  static constexpr std::array<Choice<Traction>, 4> list{{{Traction::two_wheel, "two-wheel"},
                                                         {Traction::front_assist, "front assist"},
                                                         {Traction::four_wheel, "four-wheel"},
                                                         {Traction::tracks, "tracks"}}};
};
template <> struct Words<Ground> {
  static constexpr std::array<Choice<Ground>, 4> list{
      {{Ground::concrete, "concrete"}, {Ground::firm, "firm"}, {Ground::tilled, "tilled"}, {Ground::soft, "soft"}}};
};
template <> struct Words<FeedBasis> {
  static constexpr std::array<Choice<FeedBasis>, 4> list{{{FeedBasis::wet, "wet"},
                                                          {FeedBasis::dry, "dry"},
                                                          {FeedBasis::grain, "grain"},
                                                          {FeedBasis::other_than_grain, "other than grain"}}};
};
template <> struct Words<GuardState> {
  static constexpr std::array<Choice<GuardState>, 3> list{
      {{GuardState::present, "present"}, {GuardState::damaged, "damaged"}, {GuardState::absent, "absent"}}};
};
template <> struct Words<YokeSeat> {
  static constexpr std::array<Choice<YokeSeat>, 2> list{
      {{YokeSeat::clearance, "clearance"}, {YokeSeat::clamped, "clamped"}}};
};
template <> struct Words<JointKind> {
  static constexpr std::array<Choice<JointKind>, 2> list{
      {{JointKind::plain, "plain"}, {JointKind::wide_angle, "wide-angle"}}};
};
template <> struct Words<BranchSide> {
  static constexpr std::array<Choice<BranchSide>, 4> list{{{BranchSide::left, "left"},
                                                           {BranchSide::right, "right"},
                                                           {BranchSide::rear, "rear"},
                                                           {BranchSide::direct, "direct"}}};
};
template <> struct Words<HitchKind> {
  static constexpr std::array<Choice<HitchKind>, 2> list{
      {{HitchKind::drawbar, "drawbar"}, {HitchKind::three_point, "three-point"}}};
};
template <> struct Words<LinkageCategory> {
  static constexpr std::array<Choice<LinkageCategory>, 8> list{{{LinkageCategory::one, "1"},
                                                                {LinkageCategory::one_narrow, "1N"},
                                                                {LinkageCategory::two, "2"},
                                                                {LinkageCategory::two_narrow, "2N"},
                                                                {LinkageCategory::three, "3"},
                                                                {LinkageCategory::three_narrow, "3N"},
                                                                {LinkageCategory::four, "4"},
                                                                {LinkageCategory::four_narrow, "4N"}}};
};
template <> struct Words<TopLink> {
  static constexpr std::array<Choice<TopLink>, 2> list{{{TopLink::tight, "tight"}, {TopLink::slack, "slack"}}};
};
template <> struct Words<DeviceKind> {
  static constexpr std::array<Choice<DeviceKind>, 3> list{{{DeviceKind::friction_clutch, "friction clutch"},
                                                           {DeviceKind::shear_bolt, "shear bolt"},
                                                           {DeviceKind::cut_out_clutch, "cut-out clutch"}}};
};
template <> struct Words<DevicePlace> {
  static constexpr std::array<Choice<DevicePlace>, 2> list{
      {{DevicePlace::tractor_end, "tractor end"}, {DevicePlace::implement_end, "implement end"}}};
};
template <> struct Words<MassDrive> {
  static constexpr std::array<Choice<MassDrive>, 3> list{
      {{MassDrive::engine, "engine"}, {MassDrive::pto, "pto"}, {MassDrive::geared, "geared"}}};
};
template <> struct Words<bool> { static constexpr std::array<Choice<bool>, 2> list{{{true, "yes"}, {false, "no"}}}; };

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
