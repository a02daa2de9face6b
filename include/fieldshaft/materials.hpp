#pragma once
// Materials: shaft steels and bolt grades with their sources, and shear strength by a stated ratio.

#include <fieldshaft/materials/bolt.hpp>
#include <fieldshaft/materials/catalogue.hpp>
#include <fieldshaft/materials/material.hpp>
#include <fieldshaft/materials/shear.hpp>
